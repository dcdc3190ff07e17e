(function () {
  'use strict';
  var data = JSON.parse(document.getElementById('ticks-data').textContent);
  var ticks = document.getElementById('ticks');
  var rows = [];
  data.walls.forEach(function (wall) {
    wall.rows.forEach(function (row) { row.name = 'w' + rows.length; rows.push(row); });
  });
  function ticked(row) { return Number(ticks.querySelector('input[name="' + row.name + '"]:checked').value); }
  function fill(key, values) {
    return data.say[key].replace(/\{(\d)\}/g, function (all, place) { return values[place]; });
  }
  function usd(value) {
    var digits = value === Math.round(value) ? 0 : 2;
    return '$' + value.toLocaleString('en-US', { minimumFractionDigits: digits, maximumFractionDigits: digits });
  }
  function cents(value) { return Math.round(value * 100) / 100; }
  function sums() {
    var sum = { usd: 0, days: 0, full: 0, glass: 0, leaks: 0, methods: [] };
    var set = 0;
    data.walls.forEach(function (wall) {
      var way = 0;
      wall.rows.forEach(function (row) {
        var i = ticked(row);
        way = way * row.methods.length + i;
        sum.glass += row.glass[i];
        sum.leaks += row.leaks[i];
        set |= 1 << row.methods[i];
        row.at.forEach(function (at) { sum.methods[at] = row.methods[i]; });
      });
      sum.usd += wall.usd ? wall.usd[way] : 0;
      sum.days += wall.days[way];
      sum.full += wall.full[way];
    });
    sum.usd += data.usd ? data.usd[set] : 0;
    sum.days = Math.ceil(sum.days + data.days[set] - 0.001);
    sum.full = Math.min(sum.days, Math.ceil(sum.full + data.full[set] - 0.001));
    data.known.forEach(function (known) {
      if (known.methods.join() === sum.methods.join()) { sum.days = known.days; sum.full = known.days; }
    });
    return sum;
  }
  function rank(leaks) {
    if (!data.leaks.tells) { return 'SAME'; }
    var place = (leaks - data.leaks.least) / (1 - data.leaks.least);
    var names = ['LOWEST', 'LOW', 'MIDDLE', 'HIGH'];
    for (var i = 0; i < names.length; i++) {
      if (place <= data.leaks.upTo[i]) { return names[i]; }
    }
    return 'HIGHEST';
  }
  function glass(kept) {
    var lost = data.glassToday - kept;
    if (Math.abs(lost) < 0.05) { return data.say['glass.same']; }
    var area = fill('ft2', [Math.abs(lost).toFixed(1)]);
    return fill(lost < 0 ? 'glass.more' : 'glass.less', [area, Math.round(100 * Math.abs(lost) / data.glassToday) + '%']);
  }
  function write(id, text) {
    var place = document.getElementById(id);
    if (place) { place.textContent = text; }
  }
  function show() {
    var sum = sums();
    if (data.terms) {
      var price = cents(Math.round(sum.usd / data.terms.round) * data.terms.round);
      var off = cents(price * data.terms.discount);
      write('sum-price', usd(price));
      write('sum-total', usd(cents(price - off + cents((price - off) * data.terms.tax))));
    }
    var days = sum.full < sum.days ? fill('to', [sum.full, sum.days]) : sum.days;
    write('sum-days', fill(sum.days === 1 ? 'days.one' : 'days.many', [days]));
    write('sum-glass', glass(sum.glass));
    write('sum-leaks', data.say[rank(sum.leaks)]);
    document.getElementById('choice-line').value =
      data.signs + '-' + sum.methods.map(function (method) { return data.letters[method]; }).join('');
  }
  ticks.addEventListener('change', show);
  Array.prototype.forEach.call(document.querySelectorAll('.presets button'), function (button) {
    button.addEventListener('click', function () {
      button.getAttribute('data-values').split(',').forEach(function (value, r) {
        ticks.querySelector('input[name="w' + r + '"][value="' + value + '"]').checked = true;
      });
      show();
    });
  });
  show();
}());
