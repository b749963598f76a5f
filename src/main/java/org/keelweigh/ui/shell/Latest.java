package org.keelweigh.ui.shell;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.function.SerializableConsumer;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Has one kind of question answered off the thread that draws. A newer question overtakes those that still wait: they are
 * not worked out any more, and what was worked out too late is not shown.
 *
 * @param <T> what an answer is
 */
public final class Latest<T> {

    private static final Logger LOG = LoggerFactory.getLogger(Latest.class);

    private final Background background;
    private final String question;
    private final AtomicInteger asked = new AtomicInteger();

    /**
     * Prepares for one kind of question.
     *
     * @param question what is asked, for the log, such as "what to check next"
     */
    public Latest(Background background, String question) {
        this.background = background;
        this.question = question;
    }

    /** Asks; the answer is heard in the page's own time, unless a newer question was asked or this one was dropped. */
    public void ask(UI ui, Supplier<T> work, Consumer<T> answer) {
        int number = asked.incrementAndGet();
        SerializableConsumer<T> hear = ui.accessLater(
                found -> {
                    if (number == asked.get()) {
                        answer.accept(found);
                    }
                },
                () -> LOG.debug("Nobody waits any more: {}", question));
        background.run(() -> {
            if (number == asked.get()) {
                find(work).ifPresent(hear::accept);
            }
        });
    }

    /** Drops what was asked: its answer does not matter any more. */
    public void drop() {
        asked.incrementAndGet();
    }

    private Optional<T> find(Supplier<T> work) {
        try {
            return Optional.of(work.get());
        } catch (RuntimeException e) {
            LOG.error("Could not be worked out: {}", question, e);
            return Optional.empty();
        }
    }
}
