package dev.jetting.examples.shopcounter.bench;

/**
 * An invented machine to try the counter with.
 *
 * @param name its name in an address
 * @param about a line for people
 */
public record DemoMachine(String name, String about) {}
