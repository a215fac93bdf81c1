package ovenloom.solver.order;

/** What an order costs once it is a plan; less is better. */
@FunctionalInterface
public interface Price {

  long of(Order order);
}
