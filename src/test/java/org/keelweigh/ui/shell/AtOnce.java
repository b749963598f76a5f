package org.keelweigh.ui.shell;

import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Primary;

/** Lets slow work be done at once, on the test's own thread. */
@TestConfiguration
public class AtOnce {

    @Bean
    @Primary
    Background atOnce() {
        return Runnable::run;
    }
}
