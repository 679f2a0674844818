// What the numbers mean, in sentences, below the fields they were worked out from.
export function Remarks({ texts }: { readonly texts: readonly string[] }) {
  return (
    <div class="remarks" role="status">
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </div>
  );
}
