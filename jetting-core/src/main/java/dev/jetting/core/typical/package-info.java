/**
 * Typical engines and carburettors: what a rider who has measured little may assume, by scaling
 * rules that MODEL.md states, and how much a wrong guess matters.
 */
package dev.jetting.core.typical;
