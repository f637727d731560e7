import type { ComponentChildren } from 'preact';
import { say } from '../../../wording/say.ts';
import type { ModelUser } from './use-model.ts';
import '../plan/plan.css';
import './model.css';

interface ModelPartProps {
  readonly title: string;
  /** What the teacher should know before the first press. */
  readonly about: string;
  readonly user: ModelUser;
  /** The buttons, and hints below them. */
  readonly children: ComponentChildren;
  /** What is said of the work, unless it is a fault or a download. */
  readonly says: ComponentChildren;
}

/**
 * A part of the desk that uses the language model of the browser. It asks for the model when it is unfolded, and says in
 * one line if there is none.
 */
export function ModelPart({ title, about, user, children, says }: ModelPartProps) {
  const { model } = user.work;
  const hasModel = model !== null && model !== 'none' && model !== 'unavailable';
  return (
    <details class="plan" onToggle={(event) => event.currentTarget.open && model === null && user.look()}>
      <summary>{title}</summary>
      <div class="plan-body">
        {model !== null && !hasModel && <p class="quiet">{say('desk.noModelHere')}</p>}
        {hasModel && (
          <>
            <p class="quiet">{about}</p>
            {model !== 'available' && <p class="quiet">{say('desk.modelToDownload')}</p>}
            {children}
            <div role="status">{sayWork(user.work) ?? says}</div>
          </>
        )}
      </div>
    </details>
  );
}

/** The button that cancels the work of the model. */
export function CancelButton({ user }: { user: ModelUser }) {
  if (!user.work.isWorking) return null;
  return (
    <button type="button" class="plain" onClick={user.cancel}>
      {say('desk.cancelRewriting')}
    </button>
  );
}

function sayWork({ isWorking, download, fault }: ModelUser['work']) {
  if (fault !== null) return <p class="note note-wrong">{fault}</p>;
  if (!download || !isWorking) return null;
  const percent = Math.floor(download.share * 100);
  return (
    <p class="model-download">
      <progress max={1} value={download.share} aria-label={say('desk.downloadingModel', { percent })} />{' '}
      {download.bytes === null
        ? say('desk.downloadingModel', { percent })
        : say('desk.downloadingModelOf', { percent, size: Math.round(download.bytes / 1e6) })}
    </p>
  );
}
