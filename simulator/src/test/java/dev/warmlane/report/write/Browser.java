package dev.warmlane.report.write;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A headless Chromium, driven through its DevTools protocol over the JDK's own WebSocket: no more of the protocol than
 * printing, resizing and asking takes. Its tabs may be used by several threads, each by one.
 */
final class Browser {

    private static final List<String> NAMES =
            List.of("chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome");

    private static final Pattern LISTENS = Pattern.compile("DevTools listening on (ws://\\S+)");
    private static final Pattern ID = Pattern.compile("^\\{\"id\":(\\d+)");
    private static final Pattern EVENT = Pattern.compile("^\\{\"method\":\"([A-Za-z.]+)\"");
    private static final Pattern SESSION = Pattern.compile("\"sessionId\":\"([^\"]+)\"\\}$");
    private static final long PATIENCE_S = 30;

    private final Process process;
    private final WebSocket socket;
    private final Path folder;
    private final AtomicInteger calls = new AtomicInteger();
    private final Map<Integer, CompletableFuture<String>> answers = new ConcurrentHashMap<>();
    private final Map<String, Tab> tabs = new ConcurrentHashMap<>();

    private Browser(Process process, Path folder, String address) throws Exception {
        this.process = process;
        this.folder = folder;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(address), new Listener())
                .get(PATIENCE_S, TimeUnit.SECONDS);
    }

    /** Opens another tab. */
    Tab tab() throws Exception {
        String target = field("targetId", call("", "Target.createTarget", "{\"url\":\"about:blank\"}"));
        Tab tab = new Tab(field(
                "sessionId", call("", "Target.attachToTarget", "{\"targetId\":\"" + target + "\",\"flatten\":true}")));
        tabs.put(tab.session, tab);
        for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
            call(tab.session, domain + ".enable", "{}");
        }
        return tab;
    }

    /** The browser on this machine; nothing where there is none. */
    static Optional<Path> installed() {
        return Stream.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(java.io.File.pathSeparator, -1))
                .flatMap(dir -> NAMES.stream().map(name -> Path.of(dir, name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Starts it. */
    static Browser start(Path program, Path folder) throws Exception {
        Process process = new ProcessBuilder(
                        program.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-dev-shm-usage",
                        "--no-first-run",
                        "--disable-extensions",
                        "--hide-scrollbars",
                        "--disable-background-networking",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + folder.resolve("profile"))
                .redirectErrorStream(true)
                .start();
        CompletableFuture<String> address = new CompletableFuture<>();
        Thread reader = new Thread(() -> readAddress(process, address), "browser output");
        reader.setDaemon(true);
        reader.start();
        try {
            return new Browser(process, folder, address.get(PATIENCE_S, TimeUnit.SECONDS));
        } catch (Exception e) {
            process.destroyForcibly();
            throw e;
        }
    }

    private static void readAddress(Process process, CompletableFuture<String> address) {
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                Matcher listens = LISTENS.matcher(line);
                if (listens.find()) {
                    address.complete(listens.group(1));
                }
            }
        } catch (IOException e) {
            address.completeExceptionally(e);
        }
        address.completeExceptionally(new IOException("the browser ended before it listened"));
    }

    private String call(String in, String method, String parameters) throws Exception {
        int id = calls.incrementAndGet();
        CompletableFuture<String> answer = new CompletableFuture<>();
        answers.put(id, answer);
        send("{\"id\":" + id + (in.isEmpty() ? "" : ",\"sessionId\":\"" + in + "\"") + ",\"method\":\"" + method
                + "\",\"params\":" + parameters + "}");
        String found = answer.get(PATIENCE_S, TimeUnit.SECONDS);
        if (found.contains("\"error\":") && !found.contains("\"result\":")) {
            throw new IOException(method + ": " + found);
        }
        return found;
    }

    /** One message at a time, as the socket wants it. */
    private synchronized void send(String message) throws Exception {
        socket.sendText(message, true).get(PATIENCE_S, TimeUnit.SECONDS);
    }

    private void arrived(String message) {
        Matcher id = ID.matcher(message);
        if (id.find()) {
            @Nullable CompletableFuture<String> waiting = answers.remove(Integer.parseInt(id.group(1)));
            if (waiting != null) {
                waiting.complete(message);
            }
            return;
        }
        Matcher session = SESSION.matcher(message);
        @Nullable Tab tab = session.find() ? tabs.get(session.group(1)) : null;
        if (tab != null) {
            tab.happened(message);
        }
    }

    private static String field(String name, String json) {
        Matcher field = Pattern.compile("\"" + name + "\":\\s*\"((?:[^\"\\\\]|\\\\.)*+)\"")
                .matcher(json);
        if (!field.find()) {
            throw new IllegalStateException("no " + name + " in " + json.substring(0, Math.min(400, json.length())));
        }
        return field.group(1);
    }

    /** Ends it, and what it started. */
    void quit() throws Exception {
        socket.abort();
        List<ProcessHandle> all = new ArrayList<>(process.descendants().toList());
        process.destroy();
        if (!process.waitFor(Duration.ofSeconds(5).toMillis(), TimeUnit.MILLISECONDS)) {
            process.destroyForcibly();
        }
        all.forEach(ProcessHandle::destroyForcibly);
        process.waitFor(5, TimeUnit.SECONDS);
    }

    /** Puts the parts of messages together. */
    private final class Listener implements WebSocket.Listener {

        private final StringBuilder message = new StringBuilder();

        @Override
        public @Nullable CompletionStage<?> onText(WebSocket webSocket, CharSequence data, boolean last) {
            message.append(data);
            if (last) {
                String whole = message.toString();
                message.setLength(0);
                arrived(whole);
            }
            webSocket.request(1);
            return null;
        }
    }

    /** A page. */
    final class Tab {

        private final String session;
        private final List<String> complaints = new CopyOnWriteArrayList<>();
        private final List<String> requests = new CopyOnWriteArrayList<>();
        private volatile CompletableFuture<String> loaded = new CompletableFuture<>();

        private Tab(String session) {
            this.session = session;
        }

        /** Opens a page from a file, as its reader does, and forgets what was complained of before. */
        void open(String html) throws Exception {
            complaints.clear();
            requests.clear();
            loaded = new CompletableFuture<>();
            Path file = folder.resolve("page-" + session + ".html");
            Files.writeString(file, html);
            call(session, "Page.navigate", "{\"url\":\"" + file.toUri() + "\"}");
            loaded.get(PATIENCE_S, TimeUnit.SECONDS);
        }

        /** Makes the window as wide as given, CSS pixels. */
        void width(int pixels) throws Exception {
            call(
                    session,
                    "Emulation.setDeviceMetricsOverride",
                    "{\"width\":" + pixels + ",\"height\":1000,\"deviceScaleFactor\":1,\"mobile\":false}");
        }

        /** Styles it as on paper, or again as in a window. */
        void paper(boolean printed) throws Exception {
            call(session, "Emulation.setEmulatedMedia", "{\"media\":\"" + (printed ? "print" : "") + "\"}");
        }

        /** The text that an expression gives; without quotes and backslashes. */
        String ask(String script) throws Exception {
            String quoted = script.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", " ");
            return field("value", call(session, "Runtime.evaluate", "{\"expression\":\"" + quoted + "\"}"));
        }

        /** Prints on paper of a size in inches. */
        Pdf print(double widthInches, double heightInches) throws Exception {
            String answer = call(
                    session,
                    "Page.printToPDF",
                    "{\"generateTaggedPDF\":false,\"paperWidth\":" + widthInches + ",\"paperHeight\":" + heightInches
                            + "}");
            return new Pdf(Base64.getDecoder().decode(field("data", answer)));
        }

        /** A picture of the window as PNG. */
        byte[] screenshot() throws Exception {
            return Base64.getDecoder()
                    .decode(field("data", call(session, "Page.captureScreenshot", "{\"captureBeyondViewport\":true}")));
        }

        /** Errors and warnings on the console since the page was opened. */
        List<String> complaints() {
            return List.copyOf(complaints);
        }

        /** What was asked for from elsewhere since the page was opened. */
        List<String> requests() {
            return List.copyOf(requests);
        }

        private void happened(String message) {
            Matcher event = EVENT.matcher(message);
            switch (event.find() ? event.group(1) : "") {
                case "Page.loadEventFired" -> loaded.complete(message);
                case "Log.entryAdded", "Runtime.consoleAPICalled", "Runtime.exceptionThrown" -> complaints.add(message);
                case "Network.requestWillBeSent" -> {
                    String url = field("url", message);
                    if (!url.endsWith("page-" + session + ".html") && !url.startsWith("data:")) {
                        requests.add(url);
                    }
                }
                default -> {}
            }
        }
    }
}
