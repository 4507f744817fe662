/** What an engine draws through its carburettor, and the mixture it needs. */
package dev.jetting.core.engine;
