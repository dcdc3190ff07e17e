(function () {
  'use strict';
  function all(within, selector) { return Array.prototype.slice.call(within.querySelectorAll(selector)); }
  var form = document.getElementById('find');
  var list = document.getElementById('house-list');
  if (form && list) {
    var box = document.getElementById('find-house');
    var order = document.getElementById('sort-houses');
    var said = document.getElementById('found');
    var filters = all(form, 'select[data-key]');
    var houses = all(list, 'details.house');
    var number = { family: true, shop: true, year: true };
    var show = function () {
      var words = box.value.toLowerCase().trim().split(/\s+/);
      var shown = houses.filter(function (house) {
        var text = house.getAttribute('data-words');
        var hit = words.every(function (word) { return text.indexOf(word) >= 0; }) && filters.every(function (filter) {
          return !filter.value || house.getAttribute('data-' + filter.getAttribute('data-key')) === filter.value;
        });
        house.hidden = !hit;
        return hit;
      });
      if (shown.length === 1 && box.value.trim()) { shown[0].open = true; }
      said.textContent = shown.length + ' of ' + houses.length + ' houses';
    };
    var sort = function () {
      var key = 'data-' + order.value;
      var sorted = houses.slice();
      if (order.value) {
        sorted.sort(function (a, b) {
          var x = a.getAttribute(key), y = b.getAttribute(key);
          return order.value === 'year' ? x - y : number[order.value] ? y - x : x.localeCompare(y, 'en', { numeric: true });
        });
      }
      sorted.forEach(function (house) { list.appendChild(house); });
    };
    var openNamed = function () {
      var named = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
      if (named && named.tagName === 'DETAILS') {
        named.hidden = false;
        named.open = true;
        named.scrollIntoView();
        named.querySelector('summary').focus();
      }
    };
    form.hidden = false;
    form.addEventListener('input', show);
    order.addEventListener('change', sort);
    window.addEventListener('hashchange', openNamed);
    all(document, 'a[href^="#house-"]').forEach(function (link) {
      link.addEventListener('click', function () { if (location.hash === link.getAttribute('href')) { openNamed(); } });
    });
    show();
    openNamed();
  }
  all(document, '.plot ul').forEach(function (dots) {
    var links = all(dots, 'a').sort(function (a, b) { return parseFloat(a.style.left) - parseFloat(b.style.left); });
    links.forEach(function (link, i) { link.tabIndex = i ? -1 : 0; });
    dots.addEventListener('keydown', function (event) {
      var step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
      var to = links[links.indexOf(document.activeElement) + step];
      if (to) {
        event.preventDefault();
        links.forEach(function (link) { link.tabIndex = -1; });
        to.tabIndex = 0;
        to.focus();
      }
    });
  });
}());
