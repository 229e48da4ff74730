/* global document, location, window */
document.addEventListener('DOMContentLoaded', () => {
  const frame = document.createElement('iframe');
  const standard = new window.URLSearchParams(location.search).get('standard');
  frame.src = `./${standard === 'none' ? 'scorm12' : standard}/launch.html?tier=low`;
  document.body.append(frame);
});
