package org.keelweigh.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands the one browser that all tests share to those that ask for it; it is closed after the last test. */
final class Chromium implements ParameterResolver {

    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");

    /** Keeps the machine's own browser quiet: no calls home, no first-run pages, no graphics card needed. */
    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot()
                .getStore(ExtensionContext.Namespace.create(Chromium.class))
                .computeIfAbsent(Running.class, key -> Running.start(List.of()), Running.class)
                .browser();
    }

    /** A browser that runs until it is closed. */
    record Running(Playwright playwright, Browser browser) implements AutoCloseable {

        /** Starts a browser with more arguments than usual, such as a camera of its own. */
        static Running start(List<String> more) {
            Playwright playwright = Playwright.create();
            return new Running(
                    playwright,
                    playwright
                            .chromium()
                            .launch(new BrowserType.LaunchOptions()
                                    .setExecutablePath(executable())
                                    .setTimeout(120_000)
                                    .setArgs(Stream.concat(ARGUMENTS.stream(), more.stream())
                                            .toList())));
        }

        private static Path executable() {
            return Stream.of(System.getenv("PATH").split(File.pathSeparator))
                    .flatMap(folder -> NAMES.stream().map(name -> Path.of(folder, name)))
                    .filter(Files::isExecutable)
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException(
                            "The browser tests need Chromium on the PATH, under one of the names " + NAMES + "."));
        }

        @Override
        public void close() {
            playwright.close();
        }
    }
}
