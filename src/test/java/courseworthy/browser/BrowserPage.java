package courseworthy.browser;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

/** A page of the browser: what it shows, says on the console and asks the network for, and how it is looked at. */
final class BrowserPage implements AutoCloseable {

    /** The checker of its jar; nothing else there is used. */
    private static final String AXE = "/axe.min.js";
    private static final String KEY = "Input.dispatchKeyEvent";
    /** The code of the Tab key (UI Events, Windows virtual key codes). */
    private static final int TAB = 9;
    private static final String FOCUSABLE = "a[href], area[href], button, input, select, textarea, summary, iframe, [contenteditable], "
            + "[tabindex]:not([tabindex^='-'])";

    /** Marks the first element of each style of text: its colour, size and weight, and the backgrounds and opacities of all that it stands in. */
    private static final String MARK_STYLES = """
            document.querySelectorAll('[data-style]').forEach(e => e.removeAttribute('data-style'));
            const behind = new Map(), seen = new Set();
            const ground = e => {
                if (!e) return '';
                if (!behind.has(e)) {
                    const style = getComputedStyle(e);
                    behind.set(e, [style.backgroundColor, style.backgroundImage, style.opacity, ground(e.parentElement)].join());
                }
                return behind.get(e);
            };
            for (const e of document.body.querySelectorAll('*')) {
                const style = getComputedStyle(e);
                const key = [e.tagName, style.color, style.fontSize, style.fontWeight, style.position, style.textShadow, ground(e)].join();
                if (e.checkVisibility() && !seen.has(key)) {
                    seen.add(key);
                    e.setAttribute('data-style', '');
                }
            }""";

    private final DevToolsConnection connection;
    private final String session;
    private final Runnable onClose;
    private final List<String> errors = Collections.synchronizedList(new ArrayList<>());
    private final List<String> requests = Collections.synchronizedList(new ArrayList<>());
    private volatile CompletableFuture<Void> loaded = new CompletableFuture<>();

    BrowserPage(DevToolsConnection connection, String session, Runnable onClose) {
        this.connection = connection;
        this.session = session;
        this.onClose = onClose;
        connection.listen(session, this::hear);
        for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
            call(domain + ".enable");
        }
    }

    private void hear(String event, JsonNode what) {
        switch (event) {
            case "Page.loadEventFired" -> loaded.complete(null);
            case "Network.requestWillBeSent" -> requests.add(what.get("request").get("url").asText());
            case "Runtime.exceptionThrown" -> errors.add(what.get("exceptionDetails").toString());
            case "Runtime.consoleAPICalled" -> errors.add(what.get("type").asText() + " " + what.get("args"));
            case "Log.entryAdded" -> errors.add(what.get("entry").get("text").asText());
            default -> { }
        }
    }

    private JsonNode call(String method, Object... parameters) {
        return connection.call(session, method, parameters);
    }

    /** Opens a file and waits until it is loaded; what was said and asked for before is forgotten. */
    BrowserPage show(Path file) {
        errors.clear();
        requests.clear();
        loaded = new CompletableFuture<>();
        JsonNode went = call("Page.navigate", "url", file.toUri().toString());
        if (went.has("errorText")) {
            throw new IllegalStateException(file + ": " + went.get("errorText").asText());
        }
        DevToolsConnection.await(loaded, "loading " + file);
        return this;
    }

    BrowserPage reload() {
        loaded = new CompletableFuture<>();
        call("Page.reload");
        DevToolsConnection.await(loaded, "loading again");
        return this;
    }

    /** What the console showed since the page was opened: errors, warnings and remarks of every kind. */
    List<String> console() {
        evaluate("new Promise(done => requestAnimationFrame(() => setTimeout(done, 0)))");
        return List.copyOf(errors);
    }

    /** What was asked for since the page was opened, first the page itself. */
    List<String> requests() {
        console();
        return List.copyOf(requests);
    }

    /** The value of an expression in the page, waited for where it is a promise. */
    JsonNode evaluate(String expression) {
        JsonNode answer = call("Runtime.evaluate", "expression", expression, "awaitPromise", true, "returnByValue", true, "userGesture", true);
        if (answer.has("exceptionDetails")) {
            throw new IllegalStateException(expression.substring(0, Math.min(200, expression.length())) + ": " + answer.get("exceptionDetails"));
        }
        return answer.get("result").path("value");
    }

    /** The value of a function body that returns; the same as {@link #evaluate}. */
    JsonNode run(String body) {
        return evaluate("(async () => {" + body + "})()");
    }

    /** Words that a function body returns, in order. */
    List<String> words(String body) {
        List<String> out = new ArrayList<>();
        run(body).forEach(each -> out.add(each.asText()));
        return out;
    }

    /** Opens all that opens on demand. */
    BrowserPage openAll() {
        run("document.querySelectorAll('details').forEach(e => e.open = true)");
        return this;
    }

    BrowserPage width(int pixels) {
        boolean phone = pixels < 700;
        call("Emulation.setDeviceMetricsOverride", "width", pixels, "height", phone ? 640 : 900, "deviceScaleFactor", 1, "mobile", phone);
        return this;
    }

    BrowserPage theme(Theme theme) {
        call("Emulation.setEmulatedMedia", "media", theme == Theme.PRINT ? "print" : "screen", "features",
                List.of(Map.of("name", "prefers-color-scheme", "value", theme == Theme.DARK ? "dark" : "light")));
        return this;
    }

    BrowserPage scripts(boolean run) {
        call("Emulation.setScriptExecutionDisabled", "value", !run);
        return this;
    }

    BrowserPage offline() {
        call("Network.emulateNetworkConditions", "offline", true, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1);
        return this;
    }

    /** Presses a key; Tab and Enter are what tests need. */
    void press(String key) {
        int code = key.equals("Tab") ? TAB : 13;
        String text = key.equals("Enter") ? "\r" : "";
        call(KEY, "type", text.isEmpty() ? "rawKeyDown" : "keyDown", "key", key, "code", key, "windowsVirtualKeyCode", code, "text", text);
        call(KEY, "type", "keyUp", "key", key, "code", key, "windowsVirtualKeyCode", code);
    }

    /** What can be seen and should take the focus but cannot be reached by Tab from the beginning of the page; empty where all can. */
    List<String> unreached() {
        int count = run("""
                document.activeElement.blur();
                getSelection().removeAllRanges();
                window.reached = new Set();
                document.addEventListener('focusin', e => reached.add(e.target), true);
                return [...document.querySelectorAll("%s")].length""".formatted(FOCUSABLE)).asInt();
        List<CompletableFuture<JsonNode>> pressed = new ArrayList<>();
        for (int i = 0; i < count + 5; i++) {
            pressed.add(connection.send(session, KEY, "type", "rawKeyDown", "key", "Tab", "code", "Tab", "windowsVirtualKeyCode", TAB));
            pressed.add(connection.send(session, KEY, "type", "keyUp", "key", "Tab", "code", "Tab", "windowsVirtualKeyCode", TAB));
        }
        pressed.forEach(each -> DevToolsConnection.answer(each, KEY));
        return words("""
                const twin = e => e.type === 'radio' && [...reached].some(r => r.name === e.name && r.form === e.form);
                return [...document.querySelectorAll("%s")].filter(e => e.checkVisibility({checkVisibilityCSS: true}) && !e.disabled && !reached.has(e) && !twin(e))
                    .map(e => e.outerHTML.slice(0, 120))""".formatted(FOCUSABLE));
    }

    /**
     * What an accessibility checker (axe-core) finds against WCAG 2.0 to 2.2, levels A and AA: rule, places and what is wrong.
     *
     * @param contrast which texts are held against what is behind them, which takes nine tenths of the time where it is all
     */
    List<String> accessibilityFaults(Contrast contrast) throws IOException {
        if (!evaluate("typeof axe === 'object'").asBoolean()) {
            try (InputStream script = BrowserPage.class.getResourceAsStream(AXE)) {
                evaluate(new String(script.readAllBytes(), StandardCharsets.UTF_8) + ";0");
            }
        }
        if (contrast == Contrast.EACH_STYLE) {
            run(MARK_STYLES);
        }
        return words("""
                axe.configure({rules: [{id: 'color-contrast', selector: '%s'}]});
                const found = await axe.run(document, {resultTypes: ['violations'],
                    runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']});
                return found.violations.map(v => v.id + ': ' + v.help + ': ' + v.nodes.slice(0, 5).map(n => n.html.slice(0, 160) + ' ' + n.failureSummary).join(' | '))""".formatted(contrast.selector));
    }

    /** How many pixels the page is wider than the window; at most 0 where nothing has to be scrolled sideways. */
    int overflow() {
        return evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth").asInt();
    }

    /** The page as it is printed, as PDF. */
    byte[] paper(double widthInches, double heightInches) {
        return Base64.getDecoder().decode(call("Page.printToPDF", "paperWidth", widthInches, "paperHeight", heightInches).get("data").asText());
    }

    /** A picture of the whole page, for people to look at. */
    void picture(String name) throws IOException {
        JsonNode size = call("Page.getLayoutMetrics").get("cssContentSize");
        int height = Math.min(16000, size.get("height").asInt());
        byte[] png = Base64.getDecoder().decode(call("Page.captureScreenshot", "captureBeyondViewport", true, "clip",
                Map.of("x", 0, "y", 0, "width", size.get("width").asInt(), "height", height, "scale", 1)).get("data").asText());
        Path folder = Files.createDirectories(Path.of("target", "pages"));
        Files.write(folder.resolve(name + ".png"), png);
    }

    @Override
    public void close() {
        onClose.run();
    }

    /** How a page is looked at. */
    enum Theme {
        LIGHT, DARK, PRINT
    }

    /** Which texts the accessibility checker holds against what is behind them. */
    enum Contrast {
        EVERY_TEXT("*"),
        /** The first of each style: others have the same colours. */
        EACH_STYLE("[data-style]");

        private final String selector;

        Contrast(String selector) {
            this.selector = selector;
        }
    }
}
