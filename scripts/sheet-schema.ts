import path from 'node:path';
import ts from 'typescript';
import { z } from 'zod';
import { Visit } from '../lib/visit/visit';

/** A JSON Schema, or a part of one. */
export type JsonSchema = { readonly [key: string]: unknown };

const root = path.resolve(import.meta.dirname, '..');
const dialect = 'https://json-schema.org/draft/2020-12/schema';

/** The visit's schema, from the zod schema that every part of the product checks visits by. */
export function visitSchema(): JsonSchema {
  return { ...z.toJSONSchema(Visit), title: 'Keepworth visit' };
}

/**
 * The appraisal's schema, from its TypeScript types: they are the single source, so that no second description can
 * drift from them. Descriptions are the types' own comments; the visit in it is the zod schema's.
 *
 * @throws when a type has no counterpart in JSON
 * Check: tests/scripts/sheet-schema.test.ts
 */
export function appraisalSchema(): JsonSchema {
  const config = ts.readConfigFile(path.join(root, 'tsconfig.lib.json'), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config.config, ts.sys, root);
  const file = path.join(root, 'lib/appraise/appraisal.ts');
  const program = ts.createProgram([file], { ...options, noEmit: true });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file);
  const statement = source?.statements.find(
    (node): node is ts.TypeAliasDeclaration =>
      ts.isTypeAliasDeclaration(node) && node.name.text === 'Appraisal',
  );
  if (statement === undefined) throw new Error('lib/appraise/appraisal.ts declares no Appraisal');
  const { $schema: _dialect, ...visit } = visitSchema();
  const $defs: Record<string, JsonSchema> = { Visit: visit };
  const schema = objectSchema(checker.getTypeAtLocation(statement.name));
  return { $schema: dialect, title: 'Keepworth appraisal', ...schema, $defs };

  function schemaOf(type: ts.Type): JsonSchema {
    const name = type.aliasSymbol?.name;
    if (name === undefined || type.aliasTypeArguments !== undefined) return bareSchema(type);
    if ($defs[name] === undefined) {
      $defs[name] = {};
      $defs[name] = { ...described(type.aliasSymbol), ...bareSchema(type) };
    }
    return { $ref: `#/$defs/${name}` };
  }

  function bareSchema(type: ts.Type): JsonSchema {
    if (type.isStringLiteral() || type.isNumberLiteral()) return { const: type.value };
    if (type.flags & ts.TypeFlags.BooleanLiteral) return { const: checker.typeToString(type) === 'true' };
    if (type.flags & ts.TypeFlags.Boolean) return { type: 'boolean' };
    if (type.flags & ts.TypeFlags.String) return { type: 'string' };
    if (type.flags & ts.TypeFlags.Number) return { type: 'number' };
    if (type.isUnion()) return unionSchema(type.types);
    if (checker.isTupleType(type)) {
      const items = checker.getTypeArguments(type as ts.TypeReference).map(schemaOf);
      return { type: 'array', prefixItems: items, minItems: items.length, maxItems: items.length };
    }
    if (checker.isArrayType(type)) {
      const [item] = checker.getTypeArguments(type as ts.TypeReference);
      return { type: 'array', ...(item === undefined ? {} : { items: schemaOf(item) }) };
    }
    if (type.flags & ts.TypeFlags.Object || type.isIntersection()) return objectSchema(type);
    throw new Error(`no JSON for the type ${checker.typeToString(type)}`);
  }

  function unionSchema(types: readonly ts.Type[]): JsonSchema {
    const given = types.filter((part) => !(part.flags & ts.TypeFlags.Undefined));
    const literals = given.filter((part) => part.isStringLiteral());
    if (literals.length === given.length) return { enum: literals.map((part) => part.value).sort() };
    const bools = given.filter((part) => part.flags & ts.TypeFlags.BooleanLiteral);
    const rest = given.filter((part) => !(part.flags & ts.TypeFlags.BooleanLiteral)).map(schemaOf);
    const parts = [...rest, ...(bools.length === 2 ? [{ type: 'boolean' }] : bools.map(schemaOf))];
    return parts.length === 1 && parts[0] !== undefined ? parts[0] : { anyOf: parts };
  }

  function objectSchema(type: ts.Type): JsonSchema {
    const properties: Record<string, JsonSchema> = {};
    const required: string[] = [];
    for (const property of checker.getPropertiesOfType(type)) {
      const optional = (property.flags & ts.SymbolFlags.Optional) !== 0;
      properties[property.name] = { ...described(property), ...schemaOf(checker.getTypeOfSymbol(property)) };
      if (!optional) required.push(property.name);
    }
    const index = checker.getIndexInfoOfType(type, ts.IndexKind.String);
    return {
      type: 'object',
      properties,
      ...(required.length === 0 ? {} : { required }),
      ...(index === undefined ? {} : { additionalProperties: schemaOf(index.type) }),
    };
  }

  function described(symbol: ts.Symbol | undefined): JsonSchema {
    const text = ts.displayPartsToString(symbol?.getDocumentationComment(checker)).trim();
    return text === '' ? {} : { description: text.replace(/\s+/g, ' ') };
  }
}

/** Files of the schemas as they are checked in and served. */
export const schemaFiles: readonly (readonly [string, () => JsonSchema])[] = [
  ['docs/visit.schema.json', visitSchema],
  ['docs/appraisal.schema.json', appraisalSchema],
];

/** The text of a schema's file. */
export function schemaText(schema: JsonSchema): string {
  return `${JSON.stringify(schema, null, 2)}\n`;
}
