package org.keelweigh.exchange;

/** Stops the command because of what it was given; the message is the one sentence that a person reads. */
final class BadInput extends Exception {

    private static final long serialVersionUID = 1L;

    BadInput(String sentence) {
        super(sentence);
    }

    String sentence() {
        return String.valueOf(getMessage());
    }
}
