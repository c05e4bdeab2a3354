/** The head of a table whose columns are named by the sheet. */
export function ColumnHeads(props: { readonly columns: readonly string[]; readonly className: string }) {
  return (
    <thead>
      <tr className="border-b-2 border-ink">
        {props.columns.map((column) => (
          <th key={column} scope="col" className={`text-left ${props.className}`}>
            {column}
          </th>
        ))}
      </tr>
    </thead>
  );
}
