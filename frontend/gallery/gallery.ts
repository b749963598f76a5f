// A page for the developer: every drawing with example data. Add ?scheme=dark or ?only=kw-tornado to the address.
import '../src/main';
import examples from './examples.json';

const wishes = new URLSearchParams(location.search);
const scheme = wishes.get('scheme');
if (scheme) {
  document.documentElement.dataset['scheme'] = scheme;
}

const only = wishes.get('only');
for (const [name, data] of Object.entries(examples)) {
  if (!only || only.split(',').includes(name)) {
    const figure = document.createElement('figure');
    const caption = document.createElement('figcaption');
    caption.textContent = name;
    const chart = document.createElement(name);
    Object.assign(chart, { data });
    figure.append(caption, chart);
    document.querySelector('main')?.append(figure);
  }
}
