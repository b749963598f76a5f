package org.keelweigh.shortlist;

import org.springframework.boot.test.context.SpringBootTest;

@SpringBootTest(properties = "spring.datasource.url=jdbc:h2:mem:editing")
class ShortlistEditingOnH2Tests extends ShortlistEditingContract {}
