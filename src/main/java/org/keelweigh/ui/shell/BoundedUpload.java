package org.keelweigh.ui.shell;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.server.streams.UploadEvent;
import com.vaadin.flow.server.streams.UploadHandler;
import java.io.IOException;
import java.io.InputStream;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * Receives an uploaded file in memory and stops reading where it becomes too large, whatever the browser was told.
 *
 * @param <R> what reading the file gives
 */
public final class BoundedUpload<R> implements UploadHandler {

    private static final long serialVersionUID = 1L;

    private final int mostBytes;
    private final transient Function<byte[], R> read;
    private final transient Consumer<R> done;

    /**
     * Makes the receiver.
     *
     * @param mostBytes how large a file may be; of a larger one a byte more than that is read, so that the reader can tell
     * @param read reads the bytes; it runs before the page is locked, so that slow reading does not make the page wait
     * @param done shows what was read, on the page
     */
    public BoundedUpload(int mostBytes, Function<byte[], R> read, Consumer<R> done) {
        this.mostBytes = mostBytes;
        this.read = read;
        this.done = done;
    }

    @Override
    public void handleUploadRequest(UploadEvent event) throws IOException {
        UI ui = event.getUI();
        try (InputStream in = event.getInputStream()) {
            R result = read.apply(in.readNBytes(mostBytes + 1));
            ui.access(() -> done.accept(result));
        }
    }
}
