import type { ReactNode } from 'react';
import { Button as Base, Tooltip, TooltipTrigger } from 'react-aria-components';
import { Icon, type IconName } from './icons.tsx';
import './button.css';

interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress?: () => void;
  readonly look?: 'main' | 'plain' | 'quiet';
  readonly icon?: IconName;
  readonly isDisabled?: boolean;
  readonly label?: string;
  readonly autoFocus?: boolean;
  /** Path of the plan field the button stands for, for links that lead here. */
  readonly field?: string;
}

export const Button = ({
  look = 'plain',
  icon,
  label,
  field,
  children,
  onPress,
  ...rest
}: ButtonProps) => (
  <Base
    className={`button button-${look}`}
    data-field={field}
    {...(label === undefined ? {} : { 'aria-label': label })}
    {...(onPress === undefined ? {} : { onPress })}
    {...rest}
  >
    {icon === undefined ? null : <Icon name={icon} />}
    {children}
  </Base>
);

interface IconButtonProps {
  readonly icon: IconName;
  /** Name for tooltip and screen reader. */
  readonly label: string;
  /** Keys, shown in the tooltip. */
  readonly keys?: string | null;
  readonly onPress?: () => void;
  readonly isDisabled?: boolean;
  readonly isOn?: boolean;
}

export const IconButton = ({ icon, label, keys, onPress, isDisabled, isOn }: IconButtonProps) => (
  <TooltipTrigger delay={500}>
    <Base
      className="icon-button"
      aria-label={label}
      {...(isOn === undefined ? {} : { 'aria-pressed': isOn })}
      {...(onPress === undefined ? {} : { onPress })}
      {...(isDisabled === undefined ? {} : { isDisabled })}
    >
      <Icon name={icon} />
    </Base>
    <Tooltip className="tooltip" offset={6}>
      {label}
      {keys == null ? null : <kbd>{keys}</kbd>}
    </Tooltip>
  </TooltipTrigger>
);
