package org.keelweigh.ui.chart;

/** How far each uncertain factor alone could move the lead, and where it would be lost. */
public class Tornado extends Chart<TornadoData> {

    public Tornado(String title) {
        super("kw-tornado", title);
    }
}
