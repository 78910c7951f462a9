package courseworthy.text;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A fast-loading binary form of a tree, made when the tool is built, so that shipped files need no parsing at start-up. */
public final class PackedTree {

    private static final int SCALAR = 0;
    private static final int MAPPING = 1;
    private static final int SEQUENCE = 2;

    private PackedTree() {
    }

    /** @throws IOException where the tree is too large for the form: over 65,535 lines, columns, items, or bytes in a text */
    public static void write(Node node, DataOutput out) throws IOException {
        if (node instanceof Node.Scalar scalar) {
            out.writeByte(SCALAR);
            scalar(scalar, out);
        } else if (node instanceof Node.Mapping mapping) {
            start(MAPPING, mapping, mapping.entries().size(), out);
            for (Node.Entry entry : mapping.entries()) {
                scalar(entry.key(), out);
                write(entry.value(), out);
            }
        } else if (node instanceof Node.Sequence sequence) {
            start(SEQUENCE, sequence, sequence.items().size(), out);
            for (Node item : sequence.items()) {
                write(item, out);
            }
        }
    }

    private static void start(int kind, Node node, int size, DataOutput out) throws IOException {
        out.writeByte(kind);
        number(size, out);
        number(node.line(), out);
        number(node.column(), out);
    }

    private static void scalar(Node.Scalar scalar, DataOutput out) throws IOException {
        out.writeUTF(scalar.text());
        out.writeByte((scalar.quoted() ? 1 : 0) + (scalar.cut() ? 2 : 0));
        number(scalar.line(), out);
        number(scalar.column(), out);
    }

    private static void number(int number, DataOutput out) throws IOException {
        if (number > 0xFFFF) {
            throw new IOException("too large to pack: " + number);
        }
        out.writeShort(number);
    }

    /** Reads what {@link #write} wrote. */
    public static Node read(DataInput in) throws IOException {
        int kind = in.readByte();
        if (kind == SCALAR) {
            return readScalar(in);
        }
        int size = in.readUnsignedShort();
        int line = in.readUnsignedShort();
        int column = in.readUnsignedShort();
        return kind == MAPPING ? readMapping(in, size, line, column) : readSequence(in, size, line, column);
    }

    private static Node.Scalar readScalar(DataInput in) throws IOException {
        String text = in.readUTF();
        int flags = in.readByte();
        return new Node.Scalar(text, (flags & 1) != 0, (flags & 2) != 0, in.readUnsignedShort(), in.readUnsignedShort());
    }

    private static Node.Mapping readMapping(DataInput in, int size, int line, int column) throws IOException {
        List<Node.Entry> entries = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            Node.Scalar key = readScalar(in);
            entries.add(new Node.Entry(key, read(in)));
        }
        return new Node.Mapping(entries, line, column);
    }

    private static Node.Sequence readSequence(DataInput in, int size, int line, int column) throws IOException {
        List<Node> items = new ArrayList<>(size);
        for (int i = 0; i < size; i++) {
            items.add(read(in));
        }
        return new Node.Sequence(items, line, column);
    }
}
