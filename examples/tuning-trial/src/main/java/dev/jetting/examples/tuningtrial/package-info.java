/** What tuning by the library achieves on simulated engines, beside what habit achieves. */
package dev.jetting.examples.tuningtrial;
