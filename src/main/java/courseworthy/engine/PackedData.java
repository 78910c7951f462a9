package courseworthy.engine;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A fast-loading binary form, made when the tool is built and read at each start: whole numbers of as many bytes as they need, and
 * texts by their place in a table that holds each once.
 */
final class PackedData {

    private PackedData() {
    }

    /** Writes it. */
    static final class PackedOutput {

        private final ByteArrayOutputStream body = new ByteArrayOutputStream();
        private final Map<String, Integer> texts = new LinkedHashMap<>();

        /** Seven bits a byte, least first; the sign in the lowest bit. */
        void number(long value) {
            number(value, body);
        }

        private static void number(long value, ByteArrayOutputStream to) {
            long left = value << 1 ^ value >> 63;
            while ((left & ~0x7FL) != 0) {
                to.write((int) (left & 0x7F | 0x80));
                left >>>= 7;
            }
            to.write((int) left);
        }

        void flag(boolean value) {
            number(value ? 1 : 0);
        }

        void text(String text) {
            number(texts.computeIfAbsent(text, t -> texts.size()));
        }

        void texts(List<String> all) {
            number(all.size());
            all.forEach(this::text);
        }

        /** All that was written, the table of texts first. */
        byte[] bytes() {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            number(texts.size(), out);
            for (String text : texts.keySet()) {
                byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
                number(bytes.length, out);
                out.writeBytes(bytes);
            }
            out.writeBytes(body.toByteArray());
            return out.toByteArray();
        }
    }

    /** Reads it in the same order. */
    static final class PackedInput {

        private final byte[] bytes;
        private final String[] texts;
        private int at;

        PackedInput(byte[] bytes) {
            this.bytes = bytes;
            this.texts = new String[count()];
            for (int i = 0; i < texts.length; i++) {
                int length = count();
                texts[i] = new String(bytes, at, length, StandardCharsets.UTF_8);
                at += length;
            }
        }

        long number() {
            long value = 0;
            int shift = 0;
            byte next = bytes[at++];
            while (next < 0) {
                value |= (long) (next & 0x7F) << shift;
                shift += 7;
                next = bytes[at++];
            }
            value |= (long) next << shift;
            return value >>> 1 ^ -(value & 1);
        }

        int count() {
            return (int) number();
        }

        boolean flag() {
            return number() == 1;
        }

        String text() {
            return texts[count()];
        }

        List<String> texts() {
            int size = count();
            List<String> out = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                out.add(text());
            }
            return out;
        }
    }
}
