package dev.jetting.draws;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Gives a property without a seed of its own the same draws in every build, so that a commit that
 * passed passes again. The seed comes from the property's name. {@code -Ddraws=fresh} leaves the
 * choice to jqwik, which looks where no build has looked before.
 */
public final class SameDraws implements AroundPropertyHook {

  /** For jqwik, which finds the hook by its service file. */
  public SameDraws() {}

  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  /** Outside every other hook: they may look at the seed. */
  @Override
  public int aroundPropertyProximity() {
    return -1000;
  }

  @Override
  public PropertyExecutionResult aroundProperty(
      PropertyLifecycleContext context, PropertyExecutor property) {
    if (!"fresh".equals(System.getProperty("draws")) && context.attributes().seed().isEmpty()) {
      String name = context.containerClass().getName() + "." + context.targetMethod().getName();
      context.attributes().setSeed(Integer.toString(name.hashCode()));
    }
    return property.execute();
  }
}
