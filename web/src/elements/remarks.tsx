// What the numbers mean, in sentences, below the fields they were worked out from.
export function Remarks({ texts }: { readonly texts: readonly string[] }) {
  return (
    <ul class="remarks" role="status">
      {texts.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}
