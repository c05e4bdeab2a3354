import { Text, View } from '@react-pdf/renderer';
import type { LabelledText, Sheet } from '@/lib/sheet/sheet';
import { ChoiceGrid } from './choice-grid';
import { CompanyLogo } from './company-logo';
import type { PageOneFit } from './fit';
import { ink, type Look } from './look';
import { numbered } from './numbered';
import { RunningCostBar } from './running-cost-bar';

type Props = { readonly sheet: Sheet; readonly fit: PageOneFit; readonly width: number; readonly look: Look };

/** What the customer decides from: found, costs now, choices, waiting, advice; in that order. */
export function PageOne({ sheet, fit, width, look }: Props) {
  const page = sheet.pageOne;
  const gap = { marginTop: fit.gap };
  return (
    <View>
      <View id="one-head">
        <View style={{ flexDirection: 'row', justifyContent: 'space-between' }}>
          <Text style={{ ...look.title, flex: 1, color: sheet.look?.accent ?? ink.text }}>
            {page.heading}
          </Text>
          {sheet.look?.logo === undefined ? null : <CompanyLogo source={sheet.look.logo} />}
        </View>
        {page.invented === undefined ? null : <Text style={look.evidenceStrong}>{page.invented}</Text>}
        <Facts facts={page.facts} look={look} />
      </View>

      <View id="one-finding" style={gap}>
        <Titled title={page.finding.title} text={page.finding.sentences.join(' ')} look={look} />
        {numbered(page.finding.dangers).map(({ key, item: danger }) => (
          <Text
            key={key}
            style={{
              ...look.strong,
              borderLeftWidth: 3,
              borderColor: ink.text,
              paddingLeft: 6,
              marginTop: 2,
            }}
          >
            {danger}
          </Text>
        ))}
        {page.finding.conflict === undefined ? null : (
          <Text style={{ ...look.strong, marginTop: 2 }}>{page.finding.conflict}</Text>
        )}
      </View>

      <View id="one-cost" style={gap}>
        <Titled title={page.runningCost.title} text={page.runningCost.sentences.join(' ')} look={look} />
        <RunningCostBar bar={page.runningCost.bar} width={width} look={look} />
        <Text style={look.evidence}>{page.runningCost.basis}</Text>
      </View>

      <View id="one-choices" style={gap}>
        <ChoiceGrid
          table={page.choices}
          width={width}
          look={look}
          chart={{ data: page.totals, height: fit.chartHeight }}
        />
        {page.leftOut === undefined ? null : <Text style={look.strong}>{page.leftOut}</Text>}
        {page.moreChoices === undefined ? null : <Text style={look.text}>{page.moreChoices}</Text>}
        <Text style={{ ...look.evidence, marginTop: 2 }}>
          {[page.totals.explanation, ...page.explanations].join(' ')}
        </Text>
      </View>

      <View id="one-waiting" style={gap}>
        <Titled title={page.waiting.title} text={page.waiting.sentences.join(' ')} look={look} />
      </View>

      <View
        id="one-advice"
        style={{ ...gap, borderWidth: 1.2, borderColor: ink.text, paddingHorizontal: 6, paddingVertical: 3 }}
      >
        <Text style={look.text}>
          <Text style={look.section}>{page.advice.title}:</Text>{' '}
          <Text style={look.strong}>{page.advice.sentences[0]}</Text>{' '}
          {page.advice.sentences.slice(1).join(' ')}
        </Text>
        {page.advice.wouldChange.length === 0 ? null : (
          <Text style={look.text}>
            <Text style={look.strong}>{page.advice.changeTitle}</Text> {page.advice.wouldChange.join(' ')}
          </Text>
        )}
      </View>
    </View>
  );
}

/** Whose house, which unit, when, who; as one paragraph, since names may be long. */
function Facts({ facts, look }: { readonly facts: readonly LabelledText[]; readonly look: Look }) {
  return (
    <Text style={look.evidence}>
      {facts.map((fact, i) => (
        <Text key={fact.label}>
          {i === 0 ? '' : '\u00a0\u00b7 '}
          <Text style={look.evidenceStrong}>{fact.label}:</Text> {fact.text}
        </Text>
      ))}
    </Text>
  );
}

/** A heading run in with its text, which saves a line. */
function Titled({
  title,
  text,
  look,
}: {
  readonly title: string;
  readonly text: string;
  readonly look: Look;
}) {
  return (
    <Text style={look.text}>
      <Text style={look.section}>{title}:</Text> {text}
    </Text>
  );
}
