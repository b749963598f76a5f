package org.keelweigh.ui.shell;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Gives slow work two threads, so that it never takes the whole machine from those who wait for a page. */
@Configuration
class BackgroundConfiguration {

    private static final int THREADS = 2;

    @Bean(destroyMethod = "shutdownNow")
    ExecutorService slowWork() {
        return Executors.newFixedThreadPool(
                THREADS, Thread.ofPlatform().name("slow-work-", 1).daemon().factory());
    }

    @Bean
    Background background(ExecutorService slowWork) {
        return slowWork::execute;
    }
}
