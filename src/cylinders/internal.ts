// What the other rooms use of this one and users never see.
export { guardWall } from './bore-request.js';
export { nameOversize } from './describe-bore-plan.js';
