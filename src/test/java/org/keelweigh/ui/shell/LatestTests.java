package org.keelweigh.ui.shell;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;

/** Background work and the page's own time pass only when a test lets them, so that every order of events can be had. */
class LatestTests {

    /** A page that hears answers when it is let. */
    private static final class Page extends UI {

        private static final long serialVersionUID = 1L;

        private final transient Queue<Runnable> waiting = new ArrayDeque<>();
        private boolean gone;

        @Override
        public <T> SerializableConsumer<T> accessLater(SerializableConsumer<T> hear, SerializableRunnable whenGone) {
            return answer -> {
                if (gone) {
                    whenGone.run();
                } else {
                    waiting.add(() -> hear.accept(answer));
                }
            };
        }
    }

    private final Queue<Runnable> background = new ArrayDeque<>();
    private final Page page = new Page();
    private final Latest<String> latest = new Latest<>(background::add, "what to test");
    private final List<String> worked = new ArrayList<>();
    private final List<String> shown = new ArrayList<>();
    private final ListAppender<ILoggingEvent> log = new ListAppender<>();

    @BeforeEach
    void listen() {
        log.start();
        ((Logger) LoggerFactory.getLogger(Latest.class)).addAppender(log);
    }

    @AfterEach
    void stopListening() {
        ((Logger) LoggerFactory.getLogger(Latest.class)).detachAppender(log);
    }

    private void ask(String question) {
        latest.ask(
                page,
                () -> {
                    worked.add(question);
                    return "answer to " + question;
                },
                shown::add);
    }

    private void askInVain(RuntimeException reason) {
        latest.ask(
                page,
                () -> {
                    throw reason;
                },
                shown::add);
    }

    private static void pass(Queue<Runnable> time) {
        for (Runnable next = time.poll(); next != null; next = time.poll()) {
            next.run();
        }
    }

    private void passAll() {
        pass(background);
        pass(page.waiting);
    }

    @Test
    void answersInThePagesOwnTime() {
        ask("one");
        assertThat(worked).isEmpty();

        pass(background);
        assertThat(worked).containsExactly("one");
        assertThat(shown).isEmpty();

        pass(page.waiting);
        assertThat(shown).containsExactly("answer to one");
    }

    @Test
    void doesNotWorkOutWhatANewerQuestionOvertookWhileItWaited() {
        ask("one");
        ask("two");
        ask("three");
        passAll();

        assertThat(worked).containsExactly("three");
        assertThat(shown).containsExactly("answer to three");
    }

    @Test
    void doesNotShowAnAnswerThatCameTooLate() {
        ask("one");
        pass(background);
        ask("two");
        passAll();

        assertThat(worked).containsExactly("one", "two");
        assertThat(shown).containsExactly("answer to two");
    }

    @Test
    void doesNotShowAnAnswerToAQuestionThatWasOvertakenDuringItsWork() {
        latest.ask(
                page,
                () -> {
                    ask("newer");
                    return "answer to one";
                },
                shown::add);
        passAll();

        assertThat(shown).containsExactly("answer to newer");
    }

    @Test
    void forgetsWhatWasDropped() {
        ask("waiting");
        latest.drop();
        passAll();
        assertThat(worked).isEmpty();

        ask("worked out");
        pass(background);
        latest.drop();
        passAll();
        assertThat(worked).containsExactly("worked out");
        assertThat(shown).isEmpty();

        ask("after it");
        passAll();
        assertThat(shown).containsExactly("answer to after it");
    }

    @Test
    void logsWorkThatFailsShowsNothingAndGoesOn() {
        RuntimeException reason = new IllegalStateException("no such boat");
        askInVain(reason);
        passAll();

        assertThat(shown).isEmpty();
        assertThat(log.list).singleElement().satisfies(event -> {
            assertThat(event.getLevel()).isEqualTo(Level.ERROR);
            assertThat(event.getFormattedMessage()).contains("what to test");
            assertThat(event.getThrowableProxy().getMessage()).isEqualTo("no such boat");
        });

        ask("next");
        passAll();
        assertThat(shown).containsExactly("answer to next");
    }

    @Test
    void letsAFailureLeaveAnAnswerThatStandsAlone() {
        ask("one");
        passAll();
        askInVain(new IllegalArgumentException());
        passAll();

        assertThat(shown).containsExactly("answer to one");
    }

    @Test
    void doesNotMindAPageThatHasGone() {
        ask("one");
        page.gone = true;
        passAll();

        assertThat(shown).isEmpty();
        assertThat(log.list).allSatisfy(event -> assertThat(event.getLevel()).isEqualTo(Level.DEBUG));
    }

    @Test
    void keepsKindsOfQuestionsApart() {
        Latest<String> other = new Latest<>(background::add, "what else to test");
        ask("one");
        other.ask(page, () -> "answer to another kind", shown::add);
        passAll();

        assertThat(shown).containsExactly("answer to one", "answer to another kind");
    }
}
