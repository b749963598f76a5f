package org.keelweigh.shortlist;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

@SpringBootTest
class PhotoAlbumOnPostgresTests extends PhotoAlbumContract {

    private static EmbeddedPostgres postgres;

    @BeforeAll
    static void start() throws IOException {
        if (postgres == null) {
            postgres = EmbeddedPostgres.start();
        }
    }

    @AfterAll
    static void stop() throws IOException {
        postgres.close();
    }

    @DynamicPropertySource
    static void url(DynamicPropertyRegistry registry) throws IOException {
        start();
        registry.add("spring.datasource.url", () -> postgres.getJdbcUrl("postgres", "postgres"));
        registry.add("spring.datasource.username", () -> "postgres");
    }
}
