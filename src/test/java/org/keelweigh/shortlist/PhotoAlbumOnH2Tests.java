package org.keelweigh.shortlist;

import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:photos")
class PhotoAlbumOnH2Tests extends PhotoAlbumContract {}
