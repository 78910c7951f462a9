"use strict";
// Comfort alone: everything on the page can be read without it. Nothing is fetched, nothing is sent.
(function () {
  var page = document.body.getAttribute("data-page");
  var prefix = "courseworthy/" + page + "/";

  function kept(name) {
    try { return window.localStorage.getItem(prefix + name); } catch (e) { return null; }
  }

  function keep(name, value) {
    try {
      if (value === null) { window.localStorage.removeItem(prefix + name); } else { window.localStorage.setItem(prefix + name, value); }
    } catch (e) { /* a browser that keeps nothing: ticks last as long as the page */ }
  }

  function each(selector, action) {
    Array.prototype.forEach.call(document.querySelectorAll(selector), action);
  }

  // Ticks outlast a reload, by course, rider and date.
  each("input[data-box]", function (box) {
    var name = box.getAttribute("data-box");
    box.checked = kept(name) === "done";
    box.addEventListener("change", function () { keep(name, box.checked ? "done" : null); });
  });

  // Units: metric as written, or those customary in the United States.
  var customary = false;
  var readings = [];
  function showUnits() {
    readings.forEach(function (again) { again(); });
    each("[data-us]", function (element) {
      if (!element.hasAttribute("data-metric")) { element.setAttribute("data-metric", element.textContent); }
      element.textContent = element.getAttribute(customary ? "data-us" : "data-metric");
    });
    each("[data-label-us]", function (cell) {
      if (!cell.hasAttribute("data-label-metric")) { cell.setAttribute("data-label-metric", cell.getAttribute("data-label")); }
      cell.setAttribute("data-label", cell.getAttribute(customary ? "data-label-us" : "data-label-metric"));
    });
  }

  function button(words, action) {
    var made = document.createElement("button");
    made.type = "button";
    made.textContent = words;
    made.addEventListener("click", function () { action(made); });
    return made;
  }

  function openAll(open) {
    each("main details", function (details) { details.open = open; });
  }

  each(".tools", function (tools) {
    if (document.querySelector("main details")) {
      tools.appendChild(button("Open all", function () { openAll(true); }));
      tools.appendChild(button("Close all", function () { openAll(false); }));
    }
    if (document.querySelector("[data-us]")) {
      tools.appendChild(button("US units", function (made) {
        customary = !customary;
        made.textContent = customary ? "Metric units" : "US units";
        showUnits();
        try { window.localStorage.setItem("courseworthy/units", customary ? "us" : "metric"); } catch (e) { /* not kept */ }
      }));
      try {
        if (window.localStorage.getItem("courseworthy/units") === "us") { tools.lastChild.click(); }
      } catch (e) { /* metric */ }
    }
    tools.appendChild(button("Print", function () { window.print(); }));
    tools.hidden = false;
  });

  // A reading along a course: height, clock and ground at a place, by pointer, finger or arrow keys.
  function list(element, name) {
    var text = element.getAttribute("data-" + name);
    return text ? text.split(" ").map(Number) : [];
  }

  function clock(seconds) {
    var minutes = Math.round(seconds / 60);
    var hours = Math.floor(minutes / 60);
    return hours + ":" + ("0" + (minutes - hours * 60)).slice(-2);
  }

  // What is written in metric units, whichever are shown.
  function metric(element) {
    var changed = element.querySelector("[data-metric]");
    return changed ? changed.getAttribute("data-metric") : element.textContent;
  }

  function rowAt(figure, kilometre) {
    var found = null;
    Array.prototype.forEach.call(figure.querySelectorAll("details.data tbody tr"), function (row) {
      if (parseFloat(metric(row.cells[0])) <= kilometre + 0.0005) { found = row; }
    });
    return found;
  }

  function ground(figure, kilometre) {
    var row = rowAt(figure, kilometre);
    var heads = figure.querySelectorAll("details.data thead th");
    var out = "";
    for (var i = 2; row && i < row.cells.length && i < 6; i++) {
      var words = row.cells[i].textContent.trim();
      if (words) { out += ", " + (i === 2 ? "" : heads[i].textContent.split(",")[0].toLowerCase() + " ") + words; }
    }
    return out;
  }

  each("figure", function (figure) {
    var drawings = figure.querySelectorAll("svg[data-length-m]");
    var first = figure.querySelector("svg[data-passages-at-m]");
    if (!first) { return; }
    var places = list(first, "passages-at-m");
    var seconds = list(first, "passages-s");
    var heights = list(first, "passages-height-m");
    var start = Number(first.getAttribute("data-start-s") || 0);
    var label = document.createElement("label");
    label.className = "reading";
    var slider = document.createElement("input");
    slider.type = "range";
    slider.min = 0;
    slider.max = places.length - 1;
    slider.step = 1;
    slider.value = 0;
    var words = document.createElement("output");
    label.appendChild(document.createTextNode("Along the course"));
    label.appendChild(slider);
    var lines = Array.prototype.map.call(drawings, function (drawing) {
      var line = document.createElementNS("http://www.w3.org/2000/svg", "line");
      line.setAttribute("class", "reading-line");
      line.setAttribute("y1", 0);
      line.setAttribute("y2", drawing.viewBox.baseVal.height);
      line.setAttribute("visibility", "hidden");
      drawing.appendChild(line);
      return line;
    });
    function read(index) {
      var at = places[index];
      // NIST Special Publication 811 (2008), appendix B.8: the mile and the foot in metres.
      var place = customary ? "mile " + (at / 1609.344).toFixed(1) : "km " + (at / 1000).toFixed(1);
      var height = customary ? Math.round(heights[index] / 0.3048) + "\u202fft, " : Math.round(heights[index]) + "\u202fm, ";
      var text = place + ": " + (heights.length ? height : "")
        + clock(start + seconds[index]) + (first.hasAttribute("data-start-s") ? "" : "\u202fh") + ground(figure, at / 1000);
      words.textContent = text;
      slider.setAttribute("aria-valuetext", text);
    }
    function show(index) {
      var at = places[index];
      read(index);
      Array.prototype.forEach.call(drawings, function (drawing, i) {
        var left = Number(drawing.getAttribute("data-left"));
        var x = left + (Number(drawing.getAttribute("data-right")) - left) * at / Number(drawing.getAttribute("data-length-m"));
        lines[i].setAttribute("x1", x);
        lines[i].setAttribute("x2", x);
        lines[i].setAttribute("visibility", "visible");
      });
    }
    slider.addEventListener("input", function () { show(Number(slider.value)); });
    Array.prototype.forEach.call(drawings, function (drawing) {
      drawing.addEventListener("pointermove", function (event) {
        var box = drawing.getBoundingClientRect();
        var x = (event.clientX - box.left) * drawing.viewBox.baseVal.width / box.width;
        var left = Number(drawing.getAttribute("data-left"));
        var at = (x - left) / (Number(drawing.getAttribute("data-right")) - left) * Number(drawing.getAttribute("data-length-m"));
        var nearest = 0;
        places.forEach(function (place, i) { if (Math.abs(place - at) < Math.abs(places[nearest] - at)) { nearest = i; } });
        slider.value = nearest;
        show(nearest);
      });
    });
    var caption = figure.querySelector("figcaption");
    figure.insertBefore(label, caption);
    figure.insertBefore(words, caption);
    read(0);
    readings.push(function () { read(Number(slider.value)); });
  });

  // A reference into something closed opens it.
  function openTarget() {
    var id = window.location.hash.slice(1);
    var target = id ? document.getElementById(id) : null;
    for (var at = target; at; at = at.parentElement) {
      if (at.tagName === "DETAILS") { at.open = true; }
    }
    if (target) { target.scrollIntoView(); }
  }
  window.addEventListener("hashchange", openTarget);
  openTarget();
}());
