package jarwise.wire.table;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PushbackInputStream;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParser;
import javax.xml.parsers.SAXParserFactory;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.ext.DefaultHandler2;

/**
 * Lets a workbook through only if unpacking and reading it can do no harm: not too many parts, not
 * too large, not packed like a bomb, no document type (and so no entities), no cell beyond the last
 * column a spreadsheet has. It unpacks in a stream and keeps nothing.
 */
final class WorkbookGuard {

    /** Columns end at XFD; an address with more letters makes a reader set aside gigabytes. */
    private static final Pattern CELL_ADDRESS = Pattern.compile("\\$?[A-Za-z]{1,3}\\$?[0-9]{1,7}");

    private static final List<String> XML_PARTS = List.of(".xml", ".rels");

    private final SAXParserFactory xml = SAXParserFactory.newDefaultNSInstance();
    private long unpacked;

    private WorkbookGuard() {}

    /**
     * Checks a workbook.
     *
     * @throws SheetRefused if it is broken or made to harm
     */
    static void check(byte[] bytes) {
        try (ZipFile zip =
                ZipFile.builder()
                        .setSeekableByteChannel(new SeekableInMemoryByteChannel(bytes))
                        .get()) {
            List<ZipArchiveEntry> parts = Collections.list(zip.getEntries());
            if (parts.size() > TableLimits.WORKBOOK_PARTS) {
                throw unsafe();
            }
            if (zip.getEntry("[Content_Types].xml") == null) {
                throw Faults.refusal(Fault.ofFile(FaultKind.FILE_NOT_A_SHEET));
            }
            WorkbookGuard guard = new WorkbookGuard();
            for (ZipArchiveEntry part : parts) {
                guard.checkPart(zip, part);
            }
        } catch (IOException | IllegalArgumentException e) {
            throw Faults.broken(e);
        }
    }

    private void checkPart(ZipFile zip, ZipArchiveEntry part) throws IOException {
        CRC32 checksum = new CRC32();
        try (InputStream in =
                        new CountedStream(zip.getInputStream(part), part.getCompressedSize());
                InputStream summed = new CheckedInputStream(in, checksum);
                PushbackInputStream start = new PushbackInputStream(summed, 1)) {
            int first = start.read();
            boolean named =
                    XML_PARTS.stream().anyMatch(part.getName().toLowerCase(Locale.ROOT)::endsWith);
            if (first >= 0) {
                start.unread(first);
            }
            if (named || "<\u00ef\u00fe\u00ff\0 \t\r\n".indexOf(first) >= 0) {
                checkXml(new KeptOpen(start), named);
            }
            start.transferTo(OutputStream.nullOutputStream());
        }
        if (checksum.getValue() != part.getCrc()) {
            throw new IOException("checksum of " + part.getName());
        }
    }

    private void checkXml(InputStream in, boolean mustBeXml) throws IOException {
        try {
            Watcher watcher = new Watcher();
            SAXParser parser = xml.newSAXParser();
            parser.setProperty("http://xml.org/sax/properties/lexical-handler", watcher);
            parser.parse(in, watcher);
        } catch (SAXException e) {
            if (mustBeXml) {
                throw new IOException(e);
            }
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Ends the reading at a document type, before any entity, and at cells that cannot be. */
    private static final class Watcher extends DefaultHandler2 {

        @Override
        public void startDTD(String name, @Nullable String publicId, @Nullable String systemId) {
            throw unsafe();
        }

        @Override
        public void startElement(String uri, String local, String name, Attributes attributes) {
            String address = local.equals("c") ? attributes.getValue("r") : null;
            if (address != null && !CELL_ADDRESS.matcher(address).matches()) {
                throw unsafe();
            }
        }
    }

    private static SheetRefused unsafe() {
        return Faults.refusal(Fault.ofFile(FaultKind.WORKBOOK_UNSAFE));
    }

    /** The XML reader closes what it reads, but what follows must be counted as well. */
    private static final class KeptOpen extends FilterInputStream {

        KeptOpen(InputStream in) {
            super(in);
        }

        @Override
        public void close() {
            // left to the one who opened it
        }
    }

    /** Counts what comes out of a part and refuses it as soon as it is too much. */
    private final class CountedStream extends FilterInputStream {

        private final long packed;
        private long mine;

        CountedStream(InputStream in, long packed) {
            super(in);
            this.packed = Math.max(packed, 1);
        }

        @Override
        public int read() throws IOException {
            int read = super.read();
            count(read < 0 ? 0 : 1);
            return read;
        }

        @Override
        public int read(byte[] buffer, int from, int length) throws IOException {
            int read = super.read(buffer, from, length);
            count(Math.max(read, 0));
            return read;
        }

        private void count(int bytes) {
            mine += bytes;
            unpacked += bytes;
            boolean bomb =
                    mine > TableLimits.RATIO_FREE_BYTES
                            && mine / packed > TableLimits.PACKING_RATIO;
            if (bomb || unpacked > TableLimits.UNPACKED_BYTES) {
                throw unsafe();
            }
        }
    }
}
