export { orderOfWork } from "./order-of-work.ts";
export type { Assembly, Drive, JointWork, Plan, Removable, Single, Union } from "./plan.ts";
