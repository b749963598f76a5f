package org.keelweigh.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.Documents;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.PhotoId;
import org.keelweigh.shortlist.VisitBook;
import org.springframework.stereotype.Service;

/** Writes a shortlist with its photos and the notes of its visits as one archive that {@link ZipImport} reads back. */
@Service
public class ZipExport {

    private final PhotoAlbum album;
    private final VisitBook book;

    ZipExport(PhotoAlbum album, VisitBook book) {
        this.album = album;
        this.book = book;
    }

    /** Writes the shortlist's document alone: all but the photos. */
    public byte[] document(Facts facts) {
        return ShortlistExport.of(facts, book::notes).getBytes(StandardCharsets.UTF_8);
    }

    /** Writes the archive photo by photo, so that they need not all be in memory. */
    public void write(Facts facts, OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        put(zip, ZipContents.SHORTLIST, document(facts));
        PictureIndex index = index(facts);
        put(zip, ZipContents.INDEX, Documents.tree(index).toPrettyString().getBytes(StandardCharsets.UTF_8));
        for (PictureIndex.PhotoPart photo : index.photos()) {
            Optional<byte[]> picture = album.picture(new PhotoId(photo.id()));
            if (picture.isPresent()) {
                put(zip, ZipContents.photo(photo.id()), picture.get());
            }
        }
        zip.finish();
    }

    private PictureIndex index(Facts facts) {
        List<PictureIndex.PhotoPart> photos = new ArrayList<>();
        for (Candidate boat : facts.candidates()) {
            for (Photo photo : album.photos(boat.id())) {
                photos.add(PictureIndex.PhotoPart.of(photo));
            }
        }
        return new PictureIndex(PictureIndex.FORMAT, PictureIndex.VERSION, photos, List.of());
    }

    private static void put(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }
}
