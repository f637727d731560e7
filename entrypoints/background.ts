export default defineBackground(() => {});
