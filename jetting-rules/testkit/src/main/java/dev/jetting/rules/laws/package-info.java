/**
 * The laws that any rule or rulebook can be held against by its author's tests, with any test
 * framework. Choose laws in a {@link dev.jetting.rules.laws.LawKit}, declare what a rule promises
 * in a {@link dev.jetting.rules.laws.Candidate}, and bring trials of any source.
 */
package dev.jetting.rules.laws;
