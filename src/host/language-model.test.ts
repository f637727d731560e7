import { afterEach, describe, expect, test } from 'vitest';
import { FakeLanguageModel, offerModel, takeModelAway } from '../../tests/fakes/language-model.ts';
import { type Download, findModelState, ModelFault, openModel } from './language-model.ts';

afterEach(takeModelAway);

const open = (
  onDownload: (download: Download) => void = () => undefined,
  signal = new AbortController().signal,
) => openModel('Be kind.', onDownload, signal);

describe('the state of the language model', () => {
  test('is none in a browser without the interface, and the model cannot be opened', async () => {
    expect(await findModelState()).toBe('none');
    await expect(open()).rejects.toThrow('no language model of its own');
  });

  test.each(['unavailable', 'downloadable', 'downloading', 'available'] as const)('%s', async (state) => {
    offerModel({ state });
    expect(await findModelState()).toBe(state);
    expect(FakeLanguageModel.asked).toEqual({
      expectedInputs: [{ type: 'text', languages: ['en'] }],
      expectedOutputs: [{ type: 'text', languages: ['en'] }],
    });
  });

  test('is unavailable when the browser gives an unknown state or the question fails', async () => {
    offerModel({ state: 'after-download' as 'available' });
    expect(await findModelState()).toBe('unavailable');
    offerModel({ availabilityFault: new TypeError('no') });
    expect(await findModelState()).toBe('unavailable');
  });
});

test('the progress of a download is reported, with the size in bytes if the browser tells it', async () => {
  offerModel({
    state: 'downloadable',
    download: [
      [0, 1],
      [0.5, 1],
      [3, 4],
      [0, 0],
    ],
  });
  const told: Download[] = [];
  await open((download) => told.push(download));
  expect(told).toEqual([
    { share: 0, bytes: null },
    { share: 0.5, bytes: null },
    { share: 0.75, bytes: 4 },
  ]);
});

test('each question goes to a copy of the session, which is closed afterwards', async () => {
  offerModel({ answers: ['{}', '[]'] });
  const { ask, close } = await open();
  const { signal } = new AbortController();
  expect([await ask('One', { type: 'object' }, signal), await ask('Two', {}, signal)]).toEqual(['{}', '[]']);
  expect(FakeLanguageModel.prompts).toEqual([
    ['One', { type: 'object' }],
    ['Two', {}],
  ]);
  close();
  expect(FakeLanguageModel.open).toBe(0);
});

describe('a fault of the model is explained in one sentence', () => {
  test.each([
    ['QuotaExceededError', 'too long'],
    ['NotSupportedError', 'does not know English'],
    ['NotAllowedError', 'does not allow'],
    ['NetworkError', 'could not download'],
    ['InvalidStateError', 'gave an error (it broke)'],
  ])('%s', async (name, says) => {
    const fault = new DOMException('it broke', name);
    offerModel({ createFault: fault });
    await expect(open()).rejects.toThrow(says);
    await expect(open()).rejects.toBeInstanceOf(ModelFault);
    offerModel({ promptFault: fault });
    const { ask } = await open();
    await expect(ask('One', {}, new AbortController().signal)).rejects.toThrow(says);
    await expect(ask('One', {}, new AbortController().signal)).rejects.toMatchObject({
      isTooLong: name === 'QuotaExceededError',
    });
    expect(FakeLanguageModel.open).toBe(1);
  });
});

describe('cancelling', () => {
  test('ends a download and a question at once, even if the model ignores the signal', async () => {
    offerModel({ neverCreates: true });
    const opening = new AbortController();
    const opened = open(() => undefined, opening.signal);
    opening.abort(new Error('cancelled'));
    await expect(opened).rejects.toThrow('cancelled');

    offerModel({ neverAnswers: true });
    const asking = new AbortController();
    const { ask } = await open();
    const asked = ask('One', {}, asking.signal);
    asking.abort(new Error('cancelled'));
    await expect(asked).rejects.toThrow('cancelled');
  });

  test('closes the model', async () => {
    offerModel({});
    const controller = new AbortController();
    await open(() => undefined, controller.signal);
    controller.abort();
    expect(FakeLanguageModel.open).toBe(0);
  });
});
