export * from './state';
export {
  createDeliveryCommands,
  DELIVERY_NOTE,
  QUEUE_RECORDS,
  REFUSED_RECORDS,
  SENT_RECORDS,
} from './commands';
