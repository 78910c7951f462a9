package courseworthy.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;

/** A connection to a browser by the DevTools protocol: calls with their answers, and events, each of one session. */
final class DevToolsConnection implements AutoCloseable {

    /** So that a browser that hangs ends a build at some time; nothing is measured by it. */
    static final int LAST_RESORT_S = 180;

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
    private final Map<String, BiConsumer<String, JsonNode>> listeners = new ConcurrentHashMap<>();
    private final AtomicInteger last = new AtomicInteger();
    private final WebSocket socket;

    DevToolsConnection(URI address) {
        socket = await(HttpClient.newHttpClient().newWebSocketBuilder().buildAsync(address, new Receiver()), "connecting to the browser");
    }

    /** Hands the events of a session, by their names, to a listener; it must not wait for an answer itself. */
    void listen(String session, BiConsumer<String, JsonNode> listener) {
        listeners.put(session, listener);
    }

    /**
     * Calls a method and waits for its answer.
     *
     * @param session    null for the browser itself
     * @param parameters names and values in turn
     */
    JsonNode call(String session, String method, Object... parameters) {
        return answer(send(session, method, parameters), method);
    }

    /** Calls a method without waiting: calls of one session are answered in their order. */
    CompletableFuture<JsonNode> send(String session, String method, Object... parameters) {
        ObjectNode message = JSON.createObjectNode().put("id", last.incrementAndGet()).put("method", method);
        if (session != null) {
            message.put("sessionId", session);
        }
        ObjectNode given = message.putObject("params");
        for (int i = 0; i < parameters.length; i += 2) {
            given.set((String) parameters[i], JSON.valueToTree(parameters[i + 1]));
        }
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(message.get("id").intValue(), answer);
        synchronized (this) {
            await(socket.sendText(message.toString(), true), method);
        }
        return answer;
    }

    /** The result of a call, waited for. */
    static JsonNode answer(CompletableFuture<JsonNode> sent, String method) {
        JsonNode got = await(sent, method);
        if (got.has("error")) {
            throw new IllegalStateException(method + ": " + got.get("error"));
        }
        return got.get("result");
    }

    @Override
    public void close() {
        socket.abort();
    }

    static <T> T await(CompletionStage<T> stage, String what) {
        try {
            return stage.toCompletableFuture().get(LAST_RESORT_S, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            throw new IllegalStateException(what + " failed", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(what + " was interrupted", e);
        }
    }

    private void receive(JsonNode message) {
        if (message.has("id")) {
            CompletableFuture<JsonNode> answer = waiting.remove(message.get("id").intValue());
            if (answer != null) {
                answer.complete(message);
            }
            return;
        }
        BiConsumer<String, JsonNode> listener = listeners.get(message.path("sessionId").asText());
        if (listener != null) {
            listener.accept(message.get("method").asText(), message.get("params"));
        }
    }

    private void fail(Throwable cause) {
        waiting.values().forEach(each -> each.completeExceptionally(cause));
    }

    private final class Receiver implements WebSocket.Listener {

        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean end) {
            text.append(data);
            if (end) {
                try {
                    receive(JSON.readTree(text.toString()));
                } catch (JsonProcessingException e) {
                    fail(e);
                }
                text.setLength(0);
            }
            from.request(1);
            return null;
        }

        @Override
        public CompletionStage<?> onClose(WebSocket from, int code, String reason) {
            fail(new IllegalStateException("the browser closed the connection " + reason));
            return null;
        }

        @Override
        public void onError(WebSocket from, Throwable cause) {
            fail(cause);
        }
    }
}
