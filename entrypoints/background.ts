import { defineBackground } from 'wxt/utils/define-background';
import { serveBackground } from '../src/host/serve-background.ts';

export default defineBackground(serveBackground);
