/** Text that reads as one line of thought: nodes whose words may run over from one into the next. */
export interface TextBlock {
  readonly nodes: readonly Text[];
}

/** Elements that do not interrupt a word: the link in M<a>other</a>. Not sup, whose 3 is a footnote mark. */
const INLINE = new Set(
  'A ABBR ACRONYM B BDI BDO BIG CITE DATA DEL DFN EM FONT I INS LABEL MARK Q S SMALL SPAN STRIKE STRONG TIME TT U VAR WBR'.split(
    ' ',
  ),
);
/** Never read to a child, or not text of the page. */
const LEFT_OUT = new Set(
  'SCRIPT STYLE NOSCRIPT TEMPLATE CODE PRE KBD SAMP TEXTAREA INPUT SELECT OPTION DATALIST OBJECT EMBED IFRAME FRAME AUDIO VIDEO CANVAS SVG MATH svg math HEAD TITLE RT RP METER PROGRESS'.split(
    ' ',
  ),
);

/**
 * The visible text under `root` in document order, block by block; open shadow roots are entered and told to
 * `onShadow`. Left out: scripts, code, form fields, editable text, whatever is not rendered.
 */
export function* findTextBlocks(root: Node, onShadow: (root: ShadowRoot) => void): Generator<TextBlock> {
  let nodes: Text[] = [];
  function* flush(): Generator<TextBlock> {
    if (nodes.length > 0) yield { nodes };
    nodes = [];
  }
  function* walk(node: Node): Generator<TextBlock> {
    for (let child = node.firstChild; child; child = child.nextSibling) {
      if (isText(child)) {
        if (/\S/.test(child.data) || nodes.length > 0) nodes.push(child);
      } else if (isElement(child)) {
        if (child.tagName === 'BR') yield* flush();
        else if (isRead(child)) {
          const breaks = interrupts(child);
          if (breaks) yield* flush();
          if (child.shadowRoot) {
            onShadow(child.shadowRoot);
            yield* walk(child.shadowRoot);
            yield* flush();
          }
          yield* walk(child);
          if (breaks) yield* flush();
        } else if (interrupts(child)) yield* flush();
      }
    }
  }
  if (isElement(root) && !isRead(root)) return;
  if (isInsideLeftOut(root)) return;
  if (isElement(root) && root.shadowRoot) {
    onShadow(root.shadowRoot);
    yield* walk(root.shadowRoot);
    yield* flush();
  }
  yield* walk(root);
  yield* flush();
}

/** True when a word cannot run on past this element's edge. A floated letter (a drop cap) is no edge. */
export function interrupts(element: Element): boolean {
  if (!INLINE.has(element.tagName)) return true;
  const style = element.ownerDocument.defaultView?.getComputedStyle(element);
  return style !== undefined && style.float === 'none' && !/^(inline|contents|ruby)$/.test(style.display);
}

/** The nearest element or root around a node whose text can be walked again on its own. */
export function blockAround(node: Node): Node {
  let at: Node = node;
  while (at.parentNode && (!isElement(at) || !interrupts(at))) at = at.parentNode;
  return at;
}

function isRead(element: Element): boolean {
  if (LEFT_OUT.has(element.tagName)) return false;
  if (element instanceof HTMLElement && element.isContentEditable) return false;
  return element.checkVisibility({ visibilityProperty: true }) || holdsVisible(element);
}

function isInsideLeftOut(node: Node): boolean {
  for (let at = node.parentNode; at; at = at.parentNode)
    if (isElement(at) && LEFT_OUT.has(at.tagName)) return true;
  return false;
}

/** A hidden element may show a child again; display: contents has no box of its own. */
function holdsVisible(element: Element): boolean {
  const style = element.ownerDocument.defaultView?.getComputedStyle(element);
  return style?.display === 'contents' || (style?.visibility === 'hidden' && style.display !== 'none');
}

function isText(node: Node): node is Text {
  return node.nodeType === 3;
}

function isElement(node: Node): node is Element {
  return node.nodeType === 1;
}
