package jarwise.web.tls;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Files that only the owner may read or write. They are made so, never made so afterwards. */
final class OwnerFiles {

    private static final Set<PosixFilePermission> FOLDER =
            PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> FILE =
            PosixFilePermissions.fromString("rw-------");

    private OwnerFiles() {}

    /** Makes a folder, or takes others' rights from the one that is there. */
    static void makeFolder(Path folder) throws IOException {
        Path parent = folder.toAbsolutePath().getParent();
        if (parent != null) {
            Files.createDirectories(parent);
        }
        if (!Files.isDirectory(folder)) {
            Files.createDirectory(folder, attributes(folder, FOLDER));
        }
        keepToOwner(folder, FOLDER);
    }

    /** Writes a file whole or not at all. */
    static void write(Path file, String text) throws IOException {
        Path draft = file.resolveSibling(file.getFileName() + ".unfinished");
        Files.deleteIfExists(draft);
        try (SeekableByteChannel channel =
                Files.newByteChannel(
                        draft,
                        Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                        attributes(file, FILE))) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
        }
        keepToOwner(draft, FILE);
        Files.move(
                draft, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Takes others' rights from a file that was copied here by hand. */
    static void keepFileToOwner(Path file) throws IOException {
        keepToOwner(file, FILE);
    }

    private static FileAttribute<?>[] attributes(Path place, Set<PosixFilePermission> rights) {
        return place.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(rights)}
                : new FileAttribute<?>[0];
    }

    private static void keepToOwner(Path place, Set<PosixFilePermission> rights)
            throws IOException {
        PosixFileAttributeView posix =
                Files.getFileAttributeView(place, PosixFileAttributeView.class);
        if (posix != null) {
            posix.setPermissions(rights);
            return;
        }
        AclFileAttributeView list = Files.getFileAttributeView(place, AclFileAttributeView.class);
        if (list != null) {
            list.setAcl(
                    List.of(
                            AclEntry.newBuilder()
                                    .setType(AclEntryType.ALLOW)
                                    .setPrincipal(list.getOwner())
                                    .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                                    .build()));
        }
    }
}
