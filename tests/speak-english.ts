import { speakEnglish } from '../src/wording/speak-english.ts';

speakEnglish();
