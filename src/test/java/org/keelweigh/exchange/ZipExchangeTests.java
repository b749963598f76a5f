package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.condition.Finding;
import org.keelweigh.condition.Outcome;
import org.keelweigh.picture.PictureIntake;
import org.keelweigh.picture.PictureReading;
import org.keelweigh.picture.SamplePictures;
import org.keelweigh.shortlist.Candidate;
import org.keelweigh.shortlist.CandidateData;
import org.keelweigh.shortlist.Documents;
import org.keelweigh.shortlist.Facts;
import org.keelweigh.shortlist.FieldPath;
import org.keelweigh.shortlist.Photo;
import org.keelweigh.shortlist.PhotoAlbum;
import org.keelweigh.shortlist.Shortlist;
import org.keelweigh.shortlist.ShortlistData;
import org.keelweigh.shortlist.ShortlistEditing;
import org.keelweigh.shortlist.VisitBook;
import org.keelweigh.shortlist.VisitNotes;
import org.keelweigh.shortlist.VisitOrder;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:zip")
class ZipExchangeTests {

    @Autowired
    ShortlistEditing editing;

    @Autowired
    PhotoAlbum album;

    @Autowired
    VisitBook book;

    @Autowired
    ZipExport export;

    @Autowired
    ZipImport importing;

    @Test
    void bringsPhotosAndVisitsBack() throws IOException {
        Facts facts = facts();
        byte[] archive = archive(facts);
        assertThat(ZipImport.recognises(archive)).isTrue();

        ZipImport.Outcome outcome = importing.read(archive, "Alder");

        assertThat(outcome).isInstanceOf(ZipImport.Outcome.Stored.class);
        ZipImport.Outcome.Stored stored = (ZipImport.Outcome.Stored) outcome;
        assertThat(stored.photos()).isEqualTo(1);
        Candidate copy =
                editing.facts(stored.shortlist()).orElseThrow().candidates().getFirst();
        Candidate original = facts.candidates().getFirst();
        assertThat(copy.id()).isNotEqualTo(original.id());
        assertThat(copy.data()).isEqualTo(original.data());
        Photo before = album.photos(original.id()).getFirst();
        Photo after = album.photos(copy.id()).getFirst();
        assertThat(after.caption()).isEqualTo(before.caption());
        assertThat(after.check()).isEqualTo(before.check());
        assertThat(after.addedAt()).isEqualTo(before.addedAt());
        assertThat(after.width()).isEqualTo(before.width());
        assertThat(book.notes(copy.id())).isEqualTo(book.notes(original.id()));
    }

    /** Archives of old told the visits beside the photos. */
    @Test
    void readsVisitsFromWhereTheyStoodBefore() throws IOException {
        Facts facts = facts();
        Candidate original = facts.candidates().getFirst();
        Map<String, byte[]> files = files(archive(facts));
        files.put(
                "shortlist.json",
                ShortlistExport.of(facts, boat -> VisitNotes.none()).getBytes(StandardCharsets.UTF_8));
        PictureIndex before = new PictureIndex(
                PictureIndex.FORMAT,
                PictureIndex.VERSION,
                List.of(),
                List.of(new PictureIndex.VisitPart(original.id().value(), book.notes(original.id()))));
        files.put("pictures.json", Documents.write(before).getBytes(StandardCharsets.UTF_8));

        ZipImport.Outcome.Stored stored = (ZipImport.Outcome.Stored) importing.read(zip(files), "Alder");

        Candidate copy =
                editing.facts(stored.shortlist()).orElseThrow().candidates().getFirst();
        assertThat(book.notes(copy.id())).isEqualTo(book.notes(original.id()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../etc/passwd",
                "/shortlist.json",
                "photos/../shortlist.json",
                "photos\\..\\x.jpg",
                "run.sh",
                "photos/a.jpg",
                "photos/6f2c1f0e-0000-4000-8000-000000000001.JPG.exe",
                "shortlist.json/"
            })
    void refusesFilesThatDoNotBelong(String name) throws IOException {
        Map<String, byte[]> files = files(archive(facts()));
        files.put(name, new byte[] {1});

        assertThat(sentence(zip(files))).contains("does not belong there");
    }

    @Test
    void refusesArchivesThatUnpackWithoutEnd() throws IOException {
        Map<String, byte[]> files = files(archive(facts()));
        files.put("photos/6f2c1f0e-0000-4000-8000-000000000001.jpg", new byte[20 << 20]);

        assertThat(sentence(zip(files))).contains("unpacks to more");
    }

    @Test
    void refusesFilesPackedTooTightly() throws IOException {
        Map<String, byte[]> files = files(archive(facts()));
        files.put("photos/6f2c1f0e-0000-4000-8000-000000000001.jpg", new byte[8 << 20]);

        assertThat(sentence(zip(files))).contains("packed unusually tightly");
    }

    @Test
    void refusesTooManyFiles() throws IOException {
        Map<String, byte[]> files = files(archive(facts()));
        for (int i = 0; i < 2_001; i++) {
            files.put(String.format("photos/6f2c1f0e-0000-4000-8000-%012d.jpg", i), new byte[0]);
        }

        assertThat(sentence(zip(files))).contains("more than 2000 files");
    }

    @Test
    void countsAllFilesTogether() throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        files.put("shortlist.json", new byte[600]);
        files.put("pictures.json", new byte[600]);
        byte[] archive = zip(files);

        assertThat(refusal(archive, new ZipLimits(10, 1_000, 1_000, 200))).contains("unpacks to more");
    }

    @Test
    void storesNothingOfAnArchiveWithAHostilePhoto() throws IOException {
        int before = editing.shortlists().size();
        Map<String, byte[]> files = files(archive(facts()));
        int withExample = editing.shortlists().size();
        files.replaceAll((name, bytes) ->
                name.endsWith(".jpg") ? "<svg onload=alert(1)>".getBytes(StandardCharsets.UTF_8) : bytes);

        assertThat(sentence(zip(files))).contains("not a JPEG, PNG or WebP");
        assertThat(withExample).isEqualTo(before + 1);
        assertThat(editing.shortlists()).hasSize(withExample);
    }

    @Test
    void refusesWhatDoesNotFitTogether() throws IOException {
        Map<String, byte[]> files = files(archive(facts()));
        Map<String, byte[]> other = files(archive(facts()));
        files.put("pictures.json", other.get("pictures.json"));
        assertThat(sentence(zip(files))).contains("do not fit its boats");

        other.keySet().removeIf(name -> name.endsWith(".jpg"));
        assertThat(sentence(zip(other))).contains("is not in it");

        other.remove("pictures.json");
        assertThat(sentence(zip(other))).contains("no pictures.json");

        other.put("pictures.json", "{}".getBytes(StandardCharsets.UTF_8));
        assertThat(sentence(zip(other))).contains("pictures.json");

        other.remove("shortlist.json");
        assertThat(sentence(zip(other))).contains("no shortlist.json");
    }

    @Test
    void refusesDamagedArchives() throws IOException {
        byte[] archive = archive(facts());
        for (int i = 40; i < archive.length; i += archive.length / 50) {
            byte[] damaged = archive.clone();
            damaged[i] ^= 0x55;
            int before = editing.shortlists().size();
            if (importing.read(damaged, "Alder") instanceof ZipImport.Outcome.Refused refused) {
                assertThat(refused.problems().getFirst().sentence()).endsWith(".");
                assertThat(editing.shortlists()).hasSize(before);
            } else {
                assertThat(editing.shortlists()).hasSize(before + 1);
            }
        }
        assertThat(sentence(new byte[0])).contains("no shortlist.json");
    }

    private Facts facts() {
        Shortlist list = editing.create(ShortlistData.named("Spring"), "Wren");
        CandidateData data = CandidateData.of("Green pedal boat", BoatKind.PEDAL_KAYAK)
                .withFinding(Finding.of("hull-crack", Outcome.MINOR));
        Candidate boat = editing.add(list.id(), data, "Wren");
        PictureReading.Accepted picture =
                (PictureReading.Accepted) PictureIntake.read(SamplePictures.of("jpeg", 60, 40));
        album.add(boat.id(), "hull-crack", "by the seat", Instant.parse("2026-04-01T10:15:30Z"), picture, "Wren");
        VisitNotes notes = new FieldPath("place").with(VisitNotes.none(), "Old boathouse");
        book.save(boat.id(), VisitNotes.none(), notes, "Wren");
        book.move(boat.id(), now -> now.onTheWay(VisitOrder.WORTH, "hull-crack", List.of("hull-uv")));
        return editing.facts(list.id()).orElseThrow();
    }

    private byte[] archive(Facts facts) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        export.write(facts, out);
        return out.toByteArray();
    }

    private static Map<String, byte[]> files(byte[] archive) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    private static byte[] zip(Map<String, byte[]> files) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                out.putNextEntry(new ZipEntry(file.getKey()));
                out.write(file.getValue());
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    private String sentence(byte[] archive) {
        ZipImport.Outcome outcome = importing.read(archive, "Alder");
        assertThat(outcome).isInstanceOf(ZipImport.Outcome.Refused.class);
        return ((ZipImport.Outcome.Refused) outcome).problems().getFirst().sentence();
    }

    private static String refusal(byte[] archive, ZipLimits limits) {
        try {
            ZipContents.read(archive, limits);
            return "";
        } catch (RefusedFile e) {
            return e.problem().sentence();
        }
    }
}
