/* global document, localStorage, location, Scorm12API, Scorm2004API, window */
// What the address asks for: ?standard=scorm12|scorm2004|none. What was committed is kept and given back at the next
// launch; every call that was answered with an error is listed in window.refused.
const standard = new window.URLSearchParams(location.search).get('standard');
const old = standard === 'scorm12';
window.refused = [];
window.calls = 0;
window.ended = false;

/** Elements that a system need not have. */
const MAY_LACK = ['cmi.student_data.mastery_score', 'cmi.scaled_passing_score'];

if (standard !== 'none') {
  const api = old
    ? new Scorm12API({ autocommit: false, logLevel: 5 })
    : new Scorm2004API({ autocommit: false, logLevel: 5 });
  const kept = localStorage.getItem(standard);
  const cmi = kept === null ? {} : JSON.parse(kept);
  // The system, not the lesson, says whether this is the first visit.
  const entry = kept === null ? 'ab-initio' : 'resume';
  if (old) cmi.core = { ...cmi.core, entry, student_name: 'Roe, Pat', lesson_mode: 'normal' };
  else Object.assign(cmi, { entry, learner_name: 'Roe, Pat', mode: 'normal' });
  delete cmi.session_time;
  api.loadFromJSON({ cmi }, '');
  const lastError = old ? 'LMSGetLastError' : 'GetLastError';
  const names = old
    ? ['LMSInitialize', 'LMSFinish', 'LMSGetValue', 'LMSSetValue', 'LMSCommit']
    : ['Initialize', 'Terminate', 'GetValue', 'SetValue', 'Commit'];
  const shown = { [lastError]: () => api[lastError]() };
  for (const name of names)
    shown[name] = (...values) => {
      const result = String(api[name](...values));
      const error = String(api[lastError]());
      window.calls++;
      const lacking = name.endsWith('GetValue') && MAY_LACK.includes(values[0]);
      if (error !== '0' && !lacking) window.refused.push([name, values, result, error]);
      if (name.endsWith('Commit')) localStorage.setItem(standard, JSON.stringify(api.cmi));
      if (name === 'LMSFinish' || name === 'Terminate') {
        localStorage.setItem(standard, JSON.stringify(api.cmi));
        localStorage.setItem(`${standard}-ended`, result);
      }
      return result;
    };
  window[old ? 'API' : 'API_1484_11'] = shown;
  window.cmi = () => JSON.parse(JSON.stringify(api.cmi));
}

document.addEventListener('DOMContentLoaded', () => {
  // One frame more than need be, as learning systems have them.
  const frame = document.createElement('iframe');
  frame.src = './frame.html' + location.search;
  document.body.append(frame);
});
