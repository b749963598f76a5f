package org.keelweigh.shortlist;

import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

@SpringBootTest
@ContextConfiguration(initializers = OnPostgres.class)
class PhotoAlbumOnPostgresTests extends PhotoAlbumContract {}
