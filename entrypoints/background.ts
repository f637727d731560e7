import '../src/host/data/read-data-early.ts';
import { defineBackground } from 'wxt/utils/define-background';
import { serveBackground } from '../src/host/background/serve-background.ts';

export default defineBackground(serveBackground);
