package org.keelweigh.shortlist;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Points a test's program at a PostgreSQL server that is started with the first such test and stopped when the tests end.
 */
final class OnPostgres implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    private static EmbeddedPostgres server;

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        TestPropertyValues.of(
                        "spring.datasource.url=" + started().getJdbcUrl("postgres", "postgres"),
                        "spring.datasource.username=postgres")
                .applyTo(context);
    }

    /** The server stops with the tests' process: it registers that itself. */
    private static synchronized EmbeddedPostgres started() {
        if (server == null) {
            try {
                server = EmbeddedPostgres.start();
            } catch (IOException e) {
                throw new UncheckedIOException("PostgreSQL could not be started", e);
            }
        }
        return server;
    }
}
