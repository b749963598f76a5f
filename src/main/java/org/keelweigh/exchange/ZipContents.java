package org.keelweigh.exchange;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** Unpacks an archive in memory, only files with the names that belong there and only within limits. */
final class ZipContents {

    static final String SHORTLIST = "shortlist.json";
    static final String INDEX = "pictures.json";

    private static final Pattern PHOTO = Pattern.compile("photos/[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.jpg");
    private static final int CHUNK = 16_384;

    private final Map<String, byte[]> files = new LinkedHashMap<>();

    private ZipContents() {}

    /** Tells whether a file is an archive, by its first bytes. */
    static boolean looksLikeZip(byte[] bytes) {
        return bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] == 3 && bytes[3] == 4;
    }

    /** Tells the name of a photo's file. */
    static String photo(UUID id) {
        return "photos/" + id + ".jpg";
    }

    static ZipContents read(byte[] archive, ZipLimits limits) throws RefusedFile {
        ZipContents contents = new ZipContents();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
            long left = limits.totalBytes();
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                String name = contents.permitted(entry, limits);
                byte[] bytes = unpacked(in, entry, limits, left);
                left -= bytes.length;
                contents.files.put(name, bytes);
            }
        } catch (IOException | IllegalArgumentException e) {
            throw refused("This archive is damaged and cannot be unpacked. Nothing was imported.");
        }
        return contents;
    }

    Optional<byte[]> file(String name) {
        return Optional.ofNullable(files.get(name)).map(byte[]::clone);
    }

    private String permitted(ZipEntry entry, ZipLimits limits) throws RefusedFile {
        String name = entry.getName();
        if (files.size() >= limits.entries()) {
            throw refused("This archive holds more than " + limits.entries() + " files. Nothing was imported.");
        }
        if (!name.equals(SHORTLIST)
                && !name.equals(INDEX)
                && !PHOTO.matcher(name).matches()) {
            throw refused("This archive holds a file that does not belong there: \"" + Words.brief(name)
                    + "\". Nothing was imported.");
        }
        if (files.containsKey(name)) {
            throw refused("This archive holds \"" + name + "\" twice. Nothing was imported.");
        }
        return name;
    }

    /** Counts while unpacking, because what an archive says about its sizes can be untrue. */
    private static byte[] unpacked(ZipInputStream in, ZipEntry entry, ZipLimits limits, long left)
            throws IOException, RefusedFile {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] chunk = new byte[CHUNK];
        for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
            out.write(chunk, 0, read);
            if (out.size() > limits.entryBytes() || out.size() > left) {
                throw refused("This archive unpacks to more than an export can hold. Nothing was imported.");
            }
        }
        // The packed size is known only now where it stands behind the data.
        long packed = entry.getCompressedSize();
        if (packed > 0 && out.size() > ZipLimits.SMALL_BYTES && out.size() > limits.ratio() * packed) {
            throw refused("A file in this archive is packed unusually tightly, as in archives made to do harm. "
                    + "Nothing was imported.");
        }
        return out.toByteArray();
    }

    private static RefusedFile refused(String sentence) {
        return new RefusedFile("", 1, sentence);
    }
}
