package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

@SpringBootTest
class DatabaseBackupTests {

    @TempDir
    static Path folder;

    @Autowired
    DatabaseBackup backup;

    @Autowired
    ShortlistEditing editing;

    @DynamicPropertySource
    static void keepsItsDataApart(DynamicPropertyRegistry registry) {
        registry.add("keelweigh.data-folder", folder::toString);
    }

    @Test
    void copiesADatabaseThatIsInUseSoThatTheCopyOpens(@TempDir Path elsewhere) throws Exception {
        editing.create(ShortlistData.named("Kept"), "Test");
        assertThat(backup.instead()).isEmpty();

        ByteArrayOutputStream out = new ByteArrayOutputStream();
        backup.writeTo(out);
        unpack(out.toByteArray(), elsewhere);

        String url = "jdbc:h2:file:" + elsewhere.resolve("keelweigh") + ";IFEXISTS=TRUE";
        try (var connection = DriverManager.getConnection(url, "keelweigh", "");
                var rows = connection.createStatement().executeQuery("select document from shortlist_entry")) {
            assertThat(rows.next()).isTrue();
            assertThat(rows.getString(1)).contains("Kept");
        }
    }

    private static void unpack(byte[] zip, Path target) throws IOException {
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                Files.copy(
                        in,
                        target.resolve(Path.of(entry.getName()).getFileName().toString()));
            }
        }
    }

    @Test
    void namesTheFileByTheDay() {
        assertThat(backup.fileName("2026-03-01")).isEqualTo("keelweigh-2026-03-01.zip");
    }

    @Test
    void tellsTheLastChangeOfAShortlist() {
        Shortlist made = editing.create(ShortlistData.named("Ours"), "Ann");
        editing.add(made.id(), PersonData.named("Wren"), "Bob");

        assertThat(editing.lastChange(made.id()).orElseThrow().who()).isEqualTo("Bob");
        assertThat(editing.lastChange(ShortlistId.fresh())).isEmpty();
    }
}
