package org.keelweigh.ui.visit;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.html.Span;
import java.time.Duration;
import java.time.Instant;

/** The time left that somebody gave themselves. The browser counts down by itself, so that it goes on without a network. */
final class VisitClock extends Span {

    private final long endsAtMs;
    private final int minutes;

    VisitClock(Instant startedAt, int minutes, Instant now) {
        this.endsAtMs = startedAt.plus(Duration.ofMinutes(minutes)).toEpochMilli();
        this.minutes = minutes;
        addClassName("kw-clock");
        setTestId("clock");
        getElement().setAttribute("role", "timer");
        setText(words(Duration.between(now, Instant.ofEpochMilli(endsAtMs)).toMinutes(), minutes));
    }

    static String words(long left, int minutes) {
        return left >= 0
                ? left + " of " + minutes + " minutes left"
                : -left + " minutes over the " + minutes + " you gave yourself";
    }

    @Override
    protected void onAttach(AttachEvent event) {
        getElement().executeJs("""
                        clearInterval(this.kwTick);
                        const show = () => {
                          const left = Math.floor(($0 - Date.now()) / 60000);
                          this.textContent = left >= 0 ? left + ' of ' + $1 + ' minutes left'
                            : -left + ' minutes over the ' + $1 + ' you gave yourself';
                        };
                        show();
                        this.kwTick = setInterval(() => this.isConnected ? show() : clearInterval(this.kwTick), 10000);
                        """, endsAtMs, minutes);
    }
}
