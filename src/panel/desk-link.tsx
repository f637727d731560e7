/** Leads to the desk, where any text can be pasted or opened. */
export function DeskLink() {
  return (
    <a class="plain" href="/desk.html" target="_blank" rel="noopener">
      Open the desk
    </a>
  );
}
