/// <reference types="dom-chromium-ai" />

/** The behaviour of the stand-in for the browser's language model. */
interface FakeModel {
  readonly state?: Availability;
  readonly availabilityFault?: Error;
  readonly createFault?: Error;
  readonly promptFault?: Error;
  readonly neverCreates?: boolean;
  readonly neverAnswers?: boolean;
  /** The `loaded` and `total` values of each download event. */
  readonly download?: readonly (readonly [number, number])[];
  /** The answers in order, or how one is made from the question; the last answer is repeated. */
  readonly answers?: readonly (string | ((question: string) => string))[];
  /** The most characters of a question; a longer one fails. */
  readonly room?: number;
}

let now: FakeModel = {};

/** A stand-in for the Prompt API, with the types of its published interface (webmachinelearning.github.io/prompt-api). */
export class FakeLanguageModel extends EventTarget {
  static asked: unknown;
  static readonly prompts: [unknown, unknown][] = [];
  /** The number of sessions that have not been destroyed yet. */
  static open = 0;
  #isOpen = true;

  constructor() {
    super();
    FakeLanguageModel.open++;
  }

  static async availability(options: LanguageModelCreateCoreOptions): Promise<Availability> {
    FakeLanguageModel.asked = options;
    if (now.availabilityFault) throw now.availabilityFault;
    return now.state ?? 'available';
  }

  static async create({ monitor, signal }: LanguageModelCreateOptions = {}): Promise<FakeLanguageModel> {
    signal?.throwIfAborted();
    const target = new EventTarget() as CreateMonitor;
    monitor?.(target);
    for (const [loaded, total] of now.download ?? [])
      target.dispatchEvent(Object.assign(new Event('downloadprogress'), { loaded, total }));
    if (now.neverCreates) await new Promise(() => undefined);
    if (now.createFault) throw now.createFault;
    return new FakeLanguageModel();
  }

  async clone(): Promise<FakeLanguageModel> {
    return new FakeLanguageModel();
  }

  async prompt(
    text: string,
    { responseConstraint, signal }: LanguageModelPromptOptions = {},
  ): Promise<string> {
    signal?.throwIfAborted();
    FakeLanguageModel.prompts.push([text, responseConstraint]);
    if (now.neverAnswers) await new Promise(() => undefined);
    if (now.promptFault) throw now.promptFault;
    if (text.length > (now.room ?? Number.POSITIVE_INFINITY))
      throw new DOMException('full', 'QuotaExceededError');
    const answers = now.answers ?? [];
    const answer = answers[Math.min(FakeLanguageModel.prompts.length, answers.length) - 1] ?? '';
    return typeof answer === 'string' ? answer : answer(text);
  }

  destroy(): void {
    if (this.#isOpen) FakeLanguageModel.open--;
    this.#isOpen = false;
  }
}

/** Makes the stand-in available in place of the browser's model. */
export function offerModel(model: FakeModel): void {
  now = model;
  FakeLanguageModel.prompts.length = 0;
  FakeLanguageModel.open = 0;
  Object.assign(globalThis, { LanguageModel: FakeLanguageModel });
}

export function takeModelAway(): void {
  Reflect.deleteProperty(globalThis, 'LanguageModel');
}
