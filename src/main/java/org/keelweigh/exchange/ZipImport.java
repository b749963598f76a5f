package org.keelweigh.exchange;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.keelweigh.picture.PictureIntake;
import org.keelweigh.picture.PictureReading;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateId;
import org.keelweigh.shortlist.Documents;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.ShortlistId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.core.JacksonException;

/**
 * Reads an archive that {@link ZipExport} wrote. Its pictures go the same way in as any other: looked at by content and made
 * anew. All of it is stored or nothing.
 */
@Service
@Transactional
public class ZipImport {

    /** The largest archive that is read, bytes. */
    public static final int MOST_BYTES = 80 * 1024 * 1024;

    private static final int MOST_INDEX_BYTES = 1024 * 1024;

    private final ShortlistEditing editing;
    private final ShortlistImport reader;
    private final ImportService store;
    private final PhotoAlbum album;

    ZipImport(ShortlistEditing editing, ShortlistImport reader, ImportService store, PhotoAlbum album) {
        this.editing = editing;
        this.reader = reader;
        this.store = store;
        this.album = album;
    }

    /** What came of an import. */
    public sealed interface Outcome {

        /**
         * The shortlist is there.
         *
         * @param shortlist under which identifier
         * @param photos how many photos came with it
         */
        record Stored(ShortlistId shortlist, int photos) implements Outcome {}

        /**
         * Nothing was stored.
         *
         * @param problems why, at least one
         */
        record Refused(List<ImportProblem> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /** Tells whether a file is an archive, whatever its name. */
    public static boolean recognises(byte[] bytes) {
        return ZipContents.looksLikeZip(bytes);
    }

    /** Reads and stores an archive. */
    public Outcome read(byte[] archive, String who) {
        try {
            if (archive.length > MOST_BYTES) {
                throw refused("This archive is larger than 80 MB, which is as much as is read at once.");
            }
            return read(ZipContents.read(archive, ZipLimits.USUAL), who);
        } catch (RefusedFile e) {
            return new Outcome.Refused(List.of(e.problem()));
        }
    }

    private Outcome read(ZipContents contents, String who) throws RefusedFile {
        byte[] text = contents.file(ZipContents.SHORTLIST)
                .orElseThrow(() -> refused("This archive holds no shortlist.json, so it is no export of Keelweigh."));
        ImportResult result = reader.read(text);
        if (result instanceof ImportResult.Refused refused) {
            return new Outcome.Refused(refused.problems());
        }
        ShortlistDocument document = ((ImportResult.Ready) result).document();
        PictureIndex index = index(contents, document);
        List<PictureReading.Accepted> pictures = pictures(contents, index);
        ShortlistId shortlist = store.importInto(document, who);
        Map<UUID, CandidateId> boats = stored(shortlist, document);
        for (int i = 0; i < pictures.size(); i++) {
            PictureIndex.PhotoPart photo = index.photos().get(i);
            album.add(
                    boats.get(photo.candidate()),
                    photo.check(),
                    photo.caption(),
                    photo.addedAt(),
                    pictures.get(i),
                    who);
        }
        index.visits().forEach(visit -> store.note(boats.get(visit.candidate()), visit.notes(), who));
        return new Outcome.Stored(shortlist, pictures.size());
    }

    /** Boats are stored in the document's order, perhaps under other identifiers. */
    private Map<UUID, CandidateId> stored(ShortlistId shortlist, ShortlistDocument document) {
        List<Candidate> candidates = editing.facts(shortlist).orElseThrow().candidates();
        Map<UUID, CandidateId> boats = new HashMap<>();
        for (int i = 0; i < candidates.size(); i++) {
            boats.put(document.candidates().get(i).id(), candidates.get(i).id());
        }
        return boats;
    }

    private static PictureIndex index(ZipContents contents, ShortlistDocument document) throws RefusedFile {
        byte[] text = contents.file(ZipContents.INDEX)
                .orElseThrow(() -> refused("This archive holds no pictures.json, so it is no export of Keelweigh."));
        PictureIndex index;
        if (text.length > MOST_INDEX_BYTES) {
            throw refused("The file pictures.json in this archive is larger than it can be.");
        }
        try {
            index = Documents.read(new String(text, StandardCharsets.UTF_8), PictureIndex.class);
        } catch (JacksonException e) {
            throw refused("The file pictures.json in this archive cannot be read.");
        }
        if (!PictureIndex.FORMAT.equals(index.format()) || index.formatVersion() != PictureIndex.VERSION) {
            throw refused("The file pictures.json in this archive is of a form that is not known here.");
        }
        Set<UUID> boats = new HashSet<>();
        document.candidates().forEach(boat -> boats.add(boat.id()));
        Map<UUID, Integer> counts = new HashMap<>();
        for (PictureIndex.PhotoPart photo : index.photos()) {
            if (!photo.plausible()
                    || !boats.contains(photo.candidate())
                    || counts.merge(photo.candidate(), 1, Integer::sum) > PhotoAlbum.MOST_PER_BOAT) {
                throw refused("The photos in this archive do not fit its boats.");
            }
        }
        if (index.visits().stream().anyMatch(visit -> !boats.contains(visit.candidate()))) {
            throw refused("The visits in this archive do not fit its boats.");
        }
        return index;
    }

    private static List<PictureReading.Accepted> pictures(ZipContents contents, PictureIndex index) throws RefusedFile {
        List<PictureReading.Accepted> pictures = new ArrayList<>();
        for (PictureIndex.PhotoPart photo : index.photos()) {
            byte[] file = contents.file(ZipContents.photo(photo.id()))
                    .orElseThrow(() -> refused("A photo that this archive names is not in it: " + photo.id() + "."));
            switch (PictureIntake.read(file)) {
                case PictureReading.Accepted accepted -> pictures.add(accepted);
                case PictureReading.Refused no ->
                    throw refused("The photo " + photo.id() + " in this archive was refused. " + no.sentence());
            }
        }
        return pictures;
    }

    private static RefusedFile refused(String sentence) {
        return new RefusedFile("", 1, sentence);
    }
}
