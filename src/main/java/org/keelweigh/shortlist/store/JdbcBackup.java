package org.keelweigh.shortlist.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.keelweigh.shortlist.DatabaseBackup;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Copies a file database of H2 by its own online backup; tells what to run for any other. */
@Component
class JdbcBackup implements DatabaseBackup {

    private static final String H2 = "jdbc:h2:";
    private static final String MEMORY = "jdbc:h2:mem:";

    private final JdbcTemplate jdbc;

    JdbcBackup(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public Optional<String> instead() {
        String url = url();
        if (url.startsWith(H2) && !url.startsWith(MEMORY)) {
            return Optional.empty();
        }
        return Optional.of(
                url.startsWith(MEMORY)
                        ? "This database lives in memory only and ends with the program. Export each shortlist to keep it."
                        : "Your data is in a PostgreSQL database. Run this on its machine: "
                                + "pg_dump --format=custom --file=keelweigh.dump keelweigh");
    }

    @Override
    public String fileName(String isoDay) {
        return "keelweigh-" + isoDay + ".zip";
    }

    @Override
    public void writeTo(OutputStream out) throws IOException {
        Path folder = Files.createTempDirectory("keelweigh-backup");
        Path copy = folder.resolve("backup.zip");
        try {
            jdbc.execute("backup to '" + copy.toString().replace("'", "''") + "'");
            Files.copy(copy, out);
        } catch (DataAccessException e) {
            throw new IOException("The database could not be copied", e);
        } finally {
            Files.deleteIfExists(copy);
            Files.deleteIfExists(folder);
        }
    }

    private String url() {
        ConnectionCallback<String> ask = connection -> connection.getMetaData().getURL();
        return Optional.ofNullable(jdbc.execute(ask)).orElse("");
    }
}
