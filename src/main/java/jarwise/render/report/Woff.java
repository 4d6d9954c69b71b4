package jarwise.render.report;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Unpacks a font from WOFF 1.0 (W3C Recommendation, 2012) into the TrueType it was made from: the
 * same tables, not compressed. The PDF library reads only the latter.
 */
final class Woff {

    // "GSUB": its ligatures have no character of their own in a PDF, and whoever searched the
    // letter
    // for "flower" would not find it. Under a name nobody asks for, the table is left alone.
    private static final int LIGATURES = 0x47535542;
    private static final int NO_TABLE = 0x7A7A7A7A;
    private static final int WOFF_HEADER = 44;
    private static final int WOFF_ENTRY = 20;
    private static final int SFNT_HEADER = 12;
    private static final int SFNT_ENTRY = 16;

    private Woff() {}

    static byte[] unpacked(byte[] woff) {
        ByteBuffer in = ByteBuffer.wrap(woff);
        if (in.getInt(0) != 0x774F4646) {
            throw new IllegalArgumentException("Not a WOFF font");
        }
        int tables = in.getShort(12);
        int head = SFNT_HEADER + tables * SFNT_ENTRY;
        ByteBuffer directory = ByteBuffer.allocate(head);
        int power = Integer.highestOneBit(tables);
        directory.putInt(in.getInt(4)).putShort((short) tables);
        directory.putShort((short) (power * 16));
        directory.putShort((short) Integer.numberOfTrailingZeros(power));
        directory.putShort((short) ((tables - power) * 16));
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (int i = 0; i < tables; i++) {
            int entry = WOFF_HEADER + i * WOFF_ENTRY;
            byte[] table = table(woff, in, entry);
            int tag = in.getInt(entry) == LIGATURES ? NO_TABLE : in.getInt(entry);
            directory.putInt(tag).putInt(in.getInt(entry + 16));
            directory.putInt(head + body.size()).putInt(table.length);
            body.writeBytes(table);
            // Tables start at multiples of four bytes.
            body.writeBytes(new byte[(4 - table.length % 4) % 4]);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(directory.array());
        out.writeBytes(body.toByteArray());
        return out.toByteArray();
    }

    private static byte[] table(byte[] woff, ByteBuffer in, int entry) {
        int offset = in.getInt(entry + 4);
        int packed = in.getInt(entry + 8);
        byte[] table = new byte[in.getInt(entry + 12)];
        if (packed == table.length) {
            System.arraycopy(woff, offset, table, 0, packed);
            return table;
        }
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(woff, offset, packed);
            int read = 0;
            while (read < table.length) {
                int more = inflater.inflate(table, read, table.length - read);
                if (more == 0) {
                    throw new IllegalArgumentException("A table of the font is cut off");
                }
                read += more;
            }
            return table;
        } catch (DataFormatException e) {
            throw new IllegalArgumentException("A table of the font is damaged", e);
        } finally {
            inflater.end();
        }
    }
}
