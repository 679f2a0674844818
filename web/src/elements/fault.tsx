import type { ComponentChildren } from "preact";

/** What has to be mended, at its field. Spoken at once, since the focus does not move. */
export function Fault({
  id,
  children,
}: {
  readonly id?: string;
  readonly children: ComponentChildren;
}) {
  return (
    <p class="fault" role="alert" {...(id === undefined ? {} : { id })}>
      <svg class="fault-mark" viewBox="0 0 24 24" aria-hidden="true">
        <path d="M8 2h8l6 6v8l-6 6H8l-6-6V8z" class="mark-solid" />
        <path d="M12 6v8M12 16.5v2.5" class="mark-on-solid" />
      </svg>
      <span>{children}</span>
    </p>
  );
}
