package org.keelweigh.haul;

/**
 * A request with the name of its boat, for sentences.
 *
 * @param name what people call the boat
 * @param request what to assess
 */
public record NamedRequest(String name, CartRequest request) {}
