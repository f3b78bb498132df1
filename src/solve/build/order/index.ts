export { orderOfWork } from "./order-of-work.ts";
export type { Assembly, Drive, JointWork, Plan, Single, Union } from "./plan.ts";
