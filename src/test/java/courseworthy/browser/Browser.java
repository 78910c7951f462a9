package courseworthy.browser;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A browser without a window (Chromium), started for a run of tests; each page has a context, and so a store, of its own. */
final class Browser implements AutoCloseable {

    private static final String LISTENING = "DevTools listening on ";
    private static final List<String> QUIET = List.of("--headless=new", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
            "--no-default-browser-check", "--disable-extensions", "--disable-component-update", "--disable-background-networking",
            "--disable-sync", "--disable-default-apps", "--hide-scrollbars", "--force-color-profile=srgb", "--lang=en-GB", "--remote-debugging-port=0");

    private final Process process;
    private final Path profile;
    private final DevToolsConnection connection;
    private final Thread onExit;

    private Browser(Process process, Path profile, URI address) {
        this.process = process;
        this.profile = profile;
        this.connection = new DevToolsConnection(address);
        this.onExit = new Thread(this::kill);
        Runtime.getRuntime().addShutdownHook(onExit);
    }

    /** Where a browser is: what the property {@code courseworthy.browser} names, else {@code chromium} on the path. */
    static Optional<Path> find() {
        String named = System.getProperty("courseworthy.browser", "");
        if (!named.isEmpty()) {
            return Optional.of(Path.of(named)).filter(Files::isExecutable);
        }
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator)).filter(folder -> !folder.isEmpty())
                .flatMap(folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
                .filter(Files::isExecutable).findFirst();
    }

    /** Starts the browser and waits until it answers. */
    static Browser start(Path program) throws IOException {
        Path profile = Files.createTempDirectory("courseworthy-browser");
        List<String> line = new ArrayList<>(List.of(program.toString()));
        line.addAll(QUIET);
        line.add("--user-data-dir=" + profile);
        if ("root".equals(System.getProperty("user.name"))) {
            line.add("--no-sandbox");
        }
        line.add("about:blank");
        Process process = new ProcessBuilder(line).redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        try {
            return new Browser(process, profile, DevToolsConnection.await(address(process), "starting " + program));
        } catch (RuntimeException e) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
            throw e;
        }
    }

    /** The address on which the browser says that it listens; its other words are read and, unless it ends, dropped. */
    private static CompletableFuture<URI> address(Process process) {
        CompletableFuture<URI> found = new CompletableFuture<>();
        Thread reader = new Thread(() -> {
            StringBuilder said = new StringBuilder();
            try (BufferedReader lines = new BufferedReader(new InputStreamReader(process.getErrorStream(), StandardCharsets.UTF_8))) {
                for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                    if (line.startsWith(LISTENING)) {
                        found.complete(URI.create(line.substring(LISTENING.length()).strip()));
                    } else if (!found.isDone()) {
                        said.append(line).append('\n');
                    }
                }
            } catch (IOException e) {
                said.append(e);
            }
            found.completeExceptionally(new IllegalStateException("the browser ended: " + said));
        });
        reader.setDaemon(true);
        reader.start();
        return found;
    }

    /** Opens an empty page in a context of its own. */
    BrowserPage open() {
        String context = connection.call(null, "Target.createBrowserContext").get("browserContextId").asText();
        String target = connection.call(null, "Target.createTarget", "url", "about:blank", "browserContextId", context).get("targetId").asText();
        String session = connection.call(null, "Target.attachToTarget", "targetId", target, "flatten", true).get("sessionId").asText();
        return new BrowserPage(connection, session, () -> connection.call(null, "Target.disposeBrowserContext", "browserContextId", context));
    }

    /** Asks the browser to end, and ends it where it does not. */
    @Override
    public void close() {
        try {
            connection.call(null, "Browser.close");
            process.waitFor(DevToolsConnection.LAST_RESORT_S, TimeUnit.SECONDS);
        } catch (IllegalStateException e) {
            // It is ended below.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        kill();
        Runtime.getRuntime().removeShutdownHook(onExit);
    }

    private void kill() {
        connection.close();
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        try (Stream<Path> files = Files.walk(profile)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
        } catch (IOException | UncheckedIOException e) {
            // A temporary folder that stays is no fault of what is tested.
        }
    }
}
