(function () {
  'use strict';
  var box = document.getElementById('find-house');
  var said = document.getElementById('found');
  var houses = Array.prototype.slice.call(document.querySelectorAll('details.house'));
  function show() {
    var words = box.value.toLowerCase().trim().split(/\s+/);
    var count = 0;
    houses.forEach(function (house) {
      var text = house.getAttribute('data-words');
      var hit = words.every(function (word) { return text.indexOf(word) >= 0; });
      house.hidden = !hit;
      count += hit ? 1 : 0;
    });
    if (count === 1 && box.value.trim()) {
      houses.forEach(function (house) { if (!house.hidden) { house.open = true; } });
    }
    said.textContent = count + ' of ' + houses.length + ' houses';
  }
  function openNamed() {
    var house = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (house && house.tagName === 'DETAILS') { house.hidden = false; house.open = true; house.scrollIntoView(); }
  }
  box.addEventListener('input', show);
  window.addEventListener('hashchange', openNamed);
  show();
  openNamed();
}());
