(function () {
  'use strict';

  var body = document.body;
  var buttons = Array.prototype.slice.call(document.querySelectorAll('.switch button'));

  function show(units) {
    body.classList.toggle('si', units === 'si');
    body.classList.toggle('us', units === 'us');
    buttons.forEach(function (button) {
      button.setAttribute('aria-pressed', String(button.dataset.units === units));
    });
    describe();
  }

  buttons.forEach(function (button) {
    button.addEventListener('click', function () { show(button.dataset.units); });
  });

  var data = document.getElementById('runs');
  var runs = data ? JSON.parse(data.dataset.runs) : null;
  var slider = document.getElementById('slider');
  var trace = document.getElementById('trace');
  var said = document.getElementById('said');

  function points(run) {
    return run.kpa.map(function (kpa, i) {
      var x = runs.left + runs.width * Math.min(i * run.step, run.last) / runs.end;
      var y = runs.bottom - runs.height * (kpa - runs.low) / (runs.high - runs.low);
      return x.toFixed(1) + ',' + y.toFixed(1);
    }).join(' ');
  }

  function describe() {
    if (!runs) { return; }
    var run = runs.list[Number(slider.value)];
    var text = run[body.classList.contains('us') ? 'us' : 'si'];
    said.textContent = text;
    slider.setAttribute('aria-valuetext', text);
    trace.setAttribute('points', points(run));
    trace.dataset.run = slider.value;
  }

  document.querySelectorAll('.switch, .moving').forEach(function (part) { part.hidden = false; });
  if (slider) {
    slider.addEventListener('input', describe);
  }
  document.querySelectorAll('details.look').forEach(function (part) { part.open = false; });
  window.addEventListener('beforeprint', function () {
    document.querySelectorAll('details.look').forEach(function (part) { part.open = true; });
  });
  show(body.dataset.units || 'si');
}());
