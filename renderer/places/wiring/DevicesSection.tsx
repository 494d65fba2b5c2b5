import { freshId } from '#core/plan/fresh-id.ts';
import type { WiringDevice } from '#core/plan/schema/wiring-branch.ts';
import type { Wiring } from '#core/plan/schema/wiring.ts';
import { newDevice } from '#core/wiring/index.ts';
import { Button, IconButton } from '../../controls/Button.tsx';
import { ChoiceField } from '../../controls/ChoiceField.tsx';
import { Disclosure } from '../../controls/Disclosure.tsx';
import { QuantityField } from '../../controls/QuantityField.tsx';
import { TextField } from '../../controls/TextField.tsx';
import { edit, undo, usePlan } from '../../state/plan-store.ts';
import { showToast } from '../../state/toast-store.ts';
import { useFieldWords } from '../../text/field-words.ts';
import { wiringTexts } from '../../text/wiring.ts';
import { useText } from '../../text/use-text.ts';

/** What the branches lead to; kept folded because the proposal already has most of it. */
export const DevicesSection = ({ wiring }: { readonly wiring: Wiring }) => {
  const text = useText(wiringTexts).branch;
  const accessories = usePlan((plan) => plan.machine.accessories);
  const which = useFieldWords('wiring.devices.0.accessoryId');
  const inUse = new Set(wiring.branches.flatMap(({ from, to }) => [from, to]));
  const add = (): void =>
    edit(text.addDevice, (plan) => {
      plan.wiring?.devices.push(
        newDevice(
          freshId(
            'device',
            wiring.devices.map(({ id }) => id),
          ),
          'junction',
          text.newDevice,
        ),
      );
    });
  const remove = (device: WiringDevice): void => {
    edit(text.removeDevice(device.name), (plan) => {
      if (plan.wiring !== null)
        plan.wiring.devices = plan.wiring.devices.filter(({ id }) => id !== device.id);
    });
    showToast(text.removed(device.name), { label: text.bringBack, run: undo });
  };
  return (
    <section className="section">
      <Disclosure title={text.devices} note={String(wiring.devices.length)} holds="wiring.devices">
        <ul className="device-rows">
          {wiring.devices.map((device, index) => {
            const path = `wiring.devices.${index}`;
            return (
              <li key={device.id} className="device-row">
                <TextField path={`${path}.name`} />
                <ChoiceField
                  path={`${path}.kind`}
                  entries={(Object.keys(text.deviceKinds) as WiringDevice['kind'][]).map(
                    (value) => ({ value, label: text.deviceKinds[value] }),
                  )}
                />
                {device.kind === 'motor' || device.kind === 'brake-resistor' ? (
                  <QuantityField path={`${path}.resistanceOhm`} />
                ) : null}
                {device.kind === 'controller' ? (
                  <QuantityField path={`${path}.inputCapacitanceUf`} />
                ) : null}
                {device.kind === 'accessory' ? (
                  <ChoiceField
                    path={`${path}.accessoryId`}
                    label={which.title}
                    entries={accessories.map(({ id, name }) => ({ value: id, label: name }))}
                  />
                ) : null}
                <IconButton
                  icon="trash"
                  label={text.removeDevice(device.name)}
                  isDisabled={inUse.has(device.id) || wiring.devices.length === 1}
                  onPress={() => remove(device)}
                />
              </li>
            );
          })}
        </ul>
        <Button
          icon="plus"
          field="wiring.devices"
          isDisabled={wiring.devices.length >= 80}
          onPress={add}
        >
          {text.addDevice}
        </Button>
      </Disclosure>
    </section>
  );
};
