(() => {
  'use strict';
  const memory = 'ovenloom ' + document.documentElement.dataset.plan;
  const rows = [...document.querySelectorAll('#sheet .act')];
  const lines = [...document.querySelectorAll('#sheet .acts li')].map(row => ({row, at: Date.parse(row.dataset.at)}));
  const MINUTE = 60000;
  const place = document.documentElement.dataset.zone ? {timeZone: document.documentElement.dataset.zone} : {};

  // What was ticked is remembered on this device, for this plan.
  let ticked = new Set();
  try { ticked = new Set(JSON.parse(localStorage.getItem(memory) || '[]')); } catch { /* private mode */ }
  const boxes = [...document.querySelectorAll('input[data-key]')];
  const show = () => boxes.forEach(box => { box.checked = ticked.has(box.dataset.key); });
  document.addEventListener('change', event => {
    const key = event.target.dataset.key;
    if (!key) return;
    if (event.target.checked) ticked.add(key); else ticked.delete(key);
    show();
    try { localStorage.setItem(memory, JSON.stringify([...ticked])); } catch { /* private mode */ }
    tick();
  });
  show();

  // One cook's lines.
  const who = () => (document.querySelector('input[name=who]:checked') || {value: ''}).value;
  const isMine = row => !who() || row.dataset.who.split(', ').includes(who());
  document.querySelectorAll('input[name=who]').forEach(choice => choice.addEventListener('change', () => {
    rows.forEach(row => { row.hidden = !isMine(row); });
    tick();
  }));

  // A bell, once somebody has asked for it: browsers keep a page silent until it is touched.
  const ring = document.getElementById('ring');
  let sound = null;
  ring.addEventListener('click', () => {
    const on = ring.getAttribute('aria-pressed') !== 'true';
    ring.setAttribute('aria-pressed', on);
    sound = on ? sound || new AudioContext() : sound;
    if (on) bell();
  });
  const bell = () => {
    document.documentElement.dataset.rung = Number(document.documentElement.dataset.rung || 0) + 1;
    if (navigator.vibrate) navigator.vibrate([300, 150, 300]);
    if (!sound) return;
    sound.resume();
    [0, .35, .7].forEach(later => {
      const tone = sound.createOscillator();
      const loud = sound.createGain();
      tone.frequency.value = 880;
      loud.gain.setValueAtTime(.4, sound.currentTime + later);
      loud.gain.exponentialRampToValueAtTime(.001, sound.currentTime + later + .3);
      tone.connect(loud).connect(sound.destination);
      tone.start(sound.currentTime + later);
      tone.stop(sound.currentTime + later + .3);
    });
  };

  const inWords = late => {
    const minutes = Math.ceil(late / MINUTE);
    const hours = Math.floor(minutes / 60);
    if (minutes > 2880) return 'in ' + Math.floor(hours / 24) + ' days';
    return minutes <= 0 ? 'now' : 'in ' + (hours ? hours + ' h ' : '') + (minutes % 60 ? minutes % 60 + ' min' : '');
  };
  const part = (row, name) => { const found = row.querySelector(name); return found ? found.textContent : ''; };
  const said = row => [part(row, 'time') + '.', part(row, '.cook') && part(row, '.cook') + '.', part(row, 'b') + ':',
    part(row, '.words')].filter(words => words).join(' ');

  // Which day a line is of, where it is not today's.
  const date = at => new Date(at).toLocaleDateString('en-GB', place);
  const day = line => date(line.at) === date(Date.now()) ? ''
    : line.row.parentNode.previousElementSibling.textContent.split(',')[0] + ', ';

  // A link to a line, in words; written only where it changes, so that nobody loses their place.
  const tell = (where, begins, line, words) => {
    if (where.textContent === begins + words) return;
    const begin = document.createElement('b');
    begin.textContent = begins;
    const link = document.createElement('a');
    if (line) link.href = '#' + line.row.id;
    link.textContent = words;
    where.replaceChildren(begin, link);
  };

  const nowLine = document.createElement('li');
  nowLine.className = 'nowline';
  let before = Date.now();
  const tick = () => {
    const now = Date.now();
    document.getElementById('clock').textContent = new Date(now).toLocaleTimeString('en-GB', {...place, hour: '2-digit', minute: '2-digit'});
    const mine = lines.filter(line => !line.row.hidden);
    const ahead = mine.find(line => line.at > now);
    nowLine.textContent = 'Now, ' + document.getElementById('clock').textContent;
    if (mine.length && mine[0].at <= now && ahead) ahead.row.before(nowLine); else nowLine.remove();

    const open = mine.filter(line => line.row.matches('.act') && !line.row.querySelector('input').checked);
    const next = open.find(line => line.at > now - 5 * MINUTE) || open[0];
    const begins = !next ? 'All is done.' : next.at < now - 5 * MINUTE ? 'Still open: '
      : 'Next, ' + inWords(next.at - now).trim() + ': ';
    tell(document.getElementById('next'), begins, next, next ? day(next) + said(next.row) : '');
    // Who ticks is told what was passed over.
    const missed = ticked.size ? open.filter(line => line.at <= now - 5 * MINUTE) : [];
    const more = missed.length > 1 ? ', and ' + (missed.length - 1) + ' more' : '';
    tell(document.getElementById('open'), missed.length ? 'Still open' + more + ': ' : '', missed[0],
      missed.length ? day(missed[0]) + said(missed[0].row) : '');

    lines.forEach(line => {
      let due = line.row.querySelector('.due');
      const left = line.at - now;
      const isOpen = line.row.matches('.act') && !line.row.querySelector('input').checked;
      const isSoon = isOpen && left > 0 && left < 120 * MINUTE;
      line.row.classList.toggle('late', isOpen && left <= 0 && left > -720 * MINUTE);
      const isLate = line.row.classList.contains('late');
      if ((isSoon || isLate) && !due) {
        due = document.createElement('span');
        due.className = 'due';
        line.row.querySelector('label').append(due);
      }
      if (due) due.textContent = isSoon ? inWords(left).trim() : isLate ? 'due' : '';
    });
    const due = open.filter(line => line.at > before && line.at <= now);
    if (due.length) document.getElementById('due').textContent = 'Due: ' + due.map(line => said(line.row)).join('; ');
    if (due.length && ring.getAttribute('aria-pressed') === 'true') bell();
    before = now;
    pictures(now);
  };

  // The line of the present moment through each picture.
  const pictures = now => document.querySelectorAll('.picture[data-from]').forEach(picture => {
    const from = Date.parse(picture.dataset.from);
    const share = (now - from) / (Date.parse(picture.dataset.to) - from);
    picture.querySelectorAll('.lane > svg').forEach(lane => {
      let line = lane.querySelector(':scope > .now');
      if (share < 0 || share > 1) { if (line) line.remove(); return; }
      if (!line) {
        line = document.createElementNS('http://www.w3.org/2000/svg', 'rect');
        line.setAttribute('class', 'now');
        line.setAttribute('width', '5');
        line.setAttribute('height', '100%');
        lane.append(line);
      }
      line.setAttribute('x', share * 100 + '%');
    });
  });

  // What stands where at a chosen moment.
  const scenes = [...document.querySelectorAll('.scene')].map(scene => ({
    scene, from: Date.parse(scene.dataset.from), to: Date.parse(scene.dataset.to)
  }));
  const chooser = document.getElementById('at');
  if (chooser) {
    const moments = [...new Set(scenes.map(each => each.from))].sort((one, other) => one - other);
    const choose = () => {
      const moment = moments[chooser.value];
      const words = new Date(moment).toLocaleString('en-GB', {...place, weekday: 'long', hour: '2-digit', minute: '2-digit'});
      document.getElementById('at-words').textContent = words;
      chooser.setAttribute('aria-valuetext', words);
      scenes.forEach(each => { each.scene.toggleAttribute('hidden', !(each.from <= moment && moment < each.to)); });
      document.querySelectorAll('.moment-of').forEach(each => { each.textContent = words; });
      document.querySelectorAll('.still').forEach(each => { each.hidden = true; });
    };
    chooser.max = moments.length - 1;
    chooser.addEventListener('input', choose);
    document.getElementById('moment').hidden = false;
    chooser.setAttribute('aria-valuetext', 'each when it is fullest');
    const past = moments.filter(moment => moment <= Date.now()).length;
    if (past && Date.now() < Math.max(...scenes.map(each => each.to))) {
      chooser.value = past - 1;
      choose();
    }
  }

  // What is written in a box stays in sight when its beginning is not.
  const keepInSight = picture => {
    const edge = picture.querySelector('.name').getBoundingClientRect().right;
    const places = [...picture.querySelectorAll('text.in,text.mark')].map(words => {
      const box = words.parentNode.firstElementChild.getBoundingClientRect();
      return [words, Math.max(3, Math.min(edge - box.left + 3, box.width - words.getComputedTextLength() - 3))];
    });
    places.forEach(([words, left]) => words.setAttribute('x', left));
  };

  // A picture that is too wide opens at the present moment, or where it says.
  document.querySelectorAll('.picture[data-from]').forEach(picture => {
    const [from, to, opens] = [picture.dataset.from, picture.dataset.to, picture.dataset.opens].map(Date.parse);
    const isOn = from <= Date.now() && Date.now() < to;
    const lane = picture.querySelector('.lane > svg').getBoundingClientRect();
    const names = lane.left - picture.getBoundingClientRect().left;
    const share = ((isOn ? Date.now() : opens) - from) / (to - from);
    picture.addEventListener('scroll', () => requestAnimationFrame(() => keepInSight(picture)), {passive: true});
    if (share) picture.scrollLeft = share * lane.width - (picture.clientWidth - names) * .8;
  });
  document.getElementById('tools').hidden = false;
  document.querySelectorAll('#who').forEach(each => { each.hidden = false; });
  tick();
  setInterval(tick, 1000);
})();
