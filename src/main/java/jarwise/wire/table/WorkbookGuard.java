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
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * Lets a workbook through only if unpacking and reading it can do no harm: not too many parts, not
 * too large, not packed like a bomb, no document type (and so no entities), no cell beyond the last
 * column a spreadsheet has. It unpacks in a stream and keeps nothing.
 */
final class WorkbookGuard {

    /** Columns end at XFD; an address with more letters makes a reader set aside gigabytes. */
    private static final Pattern CELL_ADDRESS = Pattern.compile("\\$?[A-Za-z]{1,3}\\$?[0-9]{1,7}");

    private static final List<String> XML_PARTS = List.of(".xml", ".rels");

    private final XMLInputFactory xml = XMLInputFactory.newDefaultFactory();
    private long unpacked;

    private WorkbookGuard() {
        xml.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        xml.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    }

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
        try (InputStream in =
                        new CountedStream(zip.getInputStream(part), part.getCompressedSize());
                PushbackInputStream start = new PushbackInputStream(in, 1)) {
            int first = start.read();
            if (first < 0) {
                return;
            }
            start.unread(first);
            boolean named =
                    XML_PARTS.stream().anyMatch(part.getName().toLowerCase(Locale.ROOT)::endsWith);
            if (named || "<\u00ef\u00fe\u00ff\0 \t\r\n".indexOf(first) >= 0) {
                checkXml(new KeptOpen(start), named);
            }
            start.transferTo(OutputStream.nullOutputStream());
        }
    }

    private void checkXml(InputStream in, boolean mustBeXml) throws IOException {
        try {
            XMLStreamReader reader = xml.createXMLStreamReader(in);
            while (reader.hasNext()) {
                checkEvent(reader, reader.next());
            }
        } catch (XMLStreamException e) {
            if (e.getNestedException() instanceof IOException nested) {
                throw nested;
            }
            if (mustBeXml) {
                throw new IOException(e);
            }
        }
    }

    private static void checkEvent(XMLStreamReader reader, int event) {
        if (event == XMLStreamConstants.DTD || event == XMLStreamConstants.ENTITY_REFERENCE) {
            throw unsafe();
        }
        if (event == XMLStreamConstants.START_ELEMENT && reader.getLocalName().equals("c")) {
            for (int i = 0; i < reader.getAttributeCount(); i++) {
                if (reader.getAttributeLocalName(i).equals("r")
                        && !CELL_ADDRESS.matcher(reader.getAttributeValue(i)).matches()) {
                    throw unsafe();
                }
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
