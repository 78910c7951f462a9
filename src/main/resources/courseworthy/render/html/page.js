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
  function showUnits() {
    each("[data-us]", function (element) {
      if (!element.hasAttribute("data-metric")) { element.setAttribute("data-metric", element.textContent); }
      element.textContent = element.getAttribute(customary ? "data-us" : "data-metric");
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
