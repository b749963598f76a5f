package org.keelweigh.ui.shell;

import com.vaadin.flow.shared.Registration;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.keelweigh.shortlist.FactsChanged;
import org.keelweigh.shortlist.ShortlistId;
import org.springframework.stereotype.Component;
import org.springframework.transaction.event.TransactionalEventListener;

/** Tells open pages that facts of their shortlist have changed. Nothing depends on it but how soon a page shows it. */
@Component
public class FactsFeed {

    private final Map<ShortlistId, Set<Consumer<FactsChanged>>> listeners = new ConcurrentHashMap<>();

    /** Listens to changes of one shortlist until the registration is removed. */
    public Registration listen(ShortlistId shortlist, Consumer<FactsChanged> listener) {
        Set<Consumer<FactsChanged>> mine = listeners.computeIfAbsent(shortlist, key -> ConcurrentHashMap.newKeySet());
        mine.add(listener);
        return () -> mine.remove(listener);
    }

    @TransactionalEventListener(fallbackExecution = true)
    void changed(FactsChanged change) {
        listeners.getOrDefault(change.shortlist(), Set.of()).forEach(listener -> listener.accept(change));
    }
}
