package org.keelweigh.ui.compare;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.function.SerializableConsumer;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.keelweigh.appraisal.AppraisalService;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.ui.shell.Background;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Has the next checks worked out off the thread that draws; a newer question overtakes those that still wait. */
final class Advice {

    private static final Logger LOG = LoggerFactory.getLogger(Advice.class);

    private final AppraisalService appraisal;
    private final Background background;
    private final AtomicInteger asked = new AtomicInteger();

    Advice(AppraisalService appraisal, Background background) {
        this.appraisal = appraisal;
        this.background = background;
    }

    /** Asks what to check next; the answer is heard in the page's own time, unless a newer question was asked. */
    void ask(UI ui, Glance glance, Consumer<NextChecks> answer) {
        int question = asked.incrementAndGet();
        SerializableConsumer<NextChecks> hear = ui.accessLater(
                checks -> {
                    if (question == asked.get()) {
                        answer.accept(checks);
                    }
                },
                () -> LOG.debug("Nobody waits any more for what to check next"));
        background.run(() -> {
            if (question == asked.get()) {
                find(glance).ifPresent(hear::accept);
            }
        });
    }

    private Optional<NextChecks> find(Glance glance) {
        try {
            return Optional.of(appraisal.nextChecks(glance.measured().facts(), glance.perspective()));
        } catch (RuntimeException e) {
            LOG.error("What to check next could not be worked out", e);
            return Optional.empty();
        }
    }
}
